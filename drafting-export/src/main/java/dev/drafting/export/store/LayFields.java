package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.LaidPiece;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.knit.Draft;
import java.util.Map;

/** A lay plan: the cloth, what was asked for, and where everything lies. */
final class LayFields {
  private LayFields() {}

  static Map<String, Object> of(LayPlan plan) {
    return fields(
        "cloth", of(plan.cloth()),
        "grainWithin", plan.lay().grainWithin(),
        "matching", plan.lay().matching(),
        "pieces", plan.pieces().stream().map(LayFields::of).toList(),
        "length", plan.length(),
        "notes", plan.notes());
  }

  private static Map<String, Object> of(Cloth cloth) {
    return fields(
        "width", cloth.width(),
        "edge", cloth.edge(),
        "fold", cloth.fold(),
        "turnedOver", cloth.fold() == Cloth.Fold.PARTLY ? cloth.turnedOver() : null,
        "length", cloth.length().orElse(null),
        "oneWay", cloth.isOneWay(),
        "spacing", cloth.spacing(),
        "repeatAlong", cloth.repeatAlong(),
        "repeatAcross", cloth.repeatAcross(),
        "flaws", cloth.flaws().stream().map(LayFields::of).toList());
  }

  private static Map<String, Object> of(Cloth.Flaw flaw) {
    return fields(
        "fromEnd", flaw.fromEnd(),
        "fromSide", flaw.fromSide(),
        "along", flaw.along(),
        "across", flaw.across());
  }

  private static Map<String, Object> of(LaidPiece piece) {
    return fields(
        "name", piece.name(),
        "cutLine", CurveFields.of(piece.cutLine()),
        "toCut", CurveFields.of(piece.toCut()),
        "layers", piece.layers(),
        "onFold", piece.isOnFold(),
        "turned", piece.isTurned(),
        "offGrain", piece.offGrain());
  }

  /** The plan of what this draft cuts from a cloth. */
  static LayPlan read(Draft draft, String name, Node node) {
    return node.placed(
        () -> {
          Lay lay =
              draft
                  .lay(name, cloth(node.get("cloth")))
                  .withGrainWithin(node.get("grainWithin").radians());
          for (Map.Entry<String, Node> match : node.get("matching").all().entrySet()) {
            lay = lay.matching(match.getKey(), match.getValue().text());
          }
          return LayPlan.of(
              lay,
              node.get("pieces").list(LayFields::piece),
              node.get("length").length(),
              node.get("notes").list(Node::text));
        });
  }

  private static Cloth cloth(Node node) {
    Cloth cloth = Cloth.of(node.get("width").length()).withEdge(node.get("edge").length());
    if (!node.get("oneWay").truth()) {
      cloth = cloth.bothWays();
    }
    cloth =
        switch (node.get("fold").constant(Cloth.Fold.class)) {
          case SINGLE -> cloth;
          case LENGTHWISE -> cloth.foldedLengthwise();
          case TO_THE_MIDDLE -> cloth.foldedToTheMiddle();
          case PARTLY -> cloth.foldedOver(node.get("turnedOver").length());
          case CROSSWISE -> cloth.foldedCrosswise();
          case TUBULAR -> cloth.tubular();
        };
    cloth =
        cloth
            .withSpacing(node.get("spacing").length())
            .withRepeat(node.get("repeatAlong").length(), node.get("repeatAcross").length());
    for (Cloth.Flaw flaw : node.get("flaws").list(LayFields::flaw)) {
      cloth = cloth.withFlaw(flaw);
    }
    return node.find("length").isPresent() ? cloth.withLength(node.get("length").length()) : cloth;
  }

  private static Cloth.Flaw flaw(Node node) {
    return new Cloth.Flaw(
        node.get("fromEnd").length(),
        node.get("fromSide").length(),
        node.get("along").length(),
        node.get("across").length());
  }

  private static LaidPiece piece(Node node) {
    LaidPiece piece =
        LaidPiece.of(
                node.get("name").text(),
                CurveFields.read(node.get("cutLine")),
                CurveFields.read(node.get("toCut")),
                node.get("layers").count())
            .offGrain(node.get("offGrain").radians());
    piece = node.get("onFold").truth() ? piece.onFold() : piece;
    return node.get("turned").truth() ? piece.turned() : piece;
  }
}
