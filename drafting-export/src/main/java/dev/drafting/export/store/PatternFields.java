package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerSide;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SharedPaper;
import java.util.List;
import java.util.Map;

/** A pattern: its pieces, seams, shared papers, patches and plackets. */
final class PatternFields {
  private final FinishFields finishes;

  PatternFields(Reading reading) {
    this.finishes = new FinishFields(reading);
  }

  static Map<String, Object> of(Pattern pattern) {
    Map<String, Object> fields =
        fields(
            "name", pattern.name(),
            "version", pattern.version(),
            "seamTolerance", pattern.seamTolerance(),
            "crossingTolerance", pattern.crossingTolerance(),
            "pieces", Fineness.checked(pattern.pieces()).stream().map(PatternFields::of).toList(),
            "seams", pattern.seams().stream().map(PatternFields::of).toList(),
            "sharedPapers", pattern.sharedPapers().stream().map(PatternFields::of).toList());
    if (!pattern.patches().isEmpty()) {
      fields.put("patches", pattern.patches().stream().map(PatchFields::of).toList());
    }
    if (!pattern.plackets().isEmpty()) {
      fields.put("plackets", pattern.plackets().stream().map(PatchFields::of).toList());
    }
    return fields;
  }

  private static Map<String, Object> of(Piece piece) {
    return fields(
        "name", piece.name(),
        "cloth", piece.cloth(),
        "cut", piece.cutting().kind(),
        "times", piece.cutting().times(),
        "grain", piece.grain(),
        "edges", piece.edges().stream().map(PatternFields::of).toList(),
        "corners",
            piece.corners().stream()
                .filter(corner -> corner.isPointed() || corner.treatment().isPresent())
                .map(PatternFields::of)
                .toList(),
        "notches", piece.notches().stream().map(PatternFields::of).toList(),
        "markings", piece.markings().stream().map(PatternFields::of).toList());
  }

  private static Map<String, Object> of(Edge edge) {
    return fields(
        "name", edge.name(),
        "curve", CurveFields.of(edge.curve()),
        "finish", FinishFields.of(edge.finish()));
  }

  private static Map<String, Object> of(Corner corner) {
    return fields(
        "before", corner.before(),
        "after", corner.after(),
        "pointed", corner.isPointed(),
        "treatment", corner.treatment().map(PatternFields::of).orElse(null));
  }

  private static Map<String, Object> of(CornerTreatment treatment) {
    CornerTreatment.Kind kind = treatment.kind();
    boolean isFolded = kind == CornerTreatment.Kind.FOLDED_BACK;
    return fields(
        "kind", kind,
        "limit", kind == CornerTreatment.Kind.MITRE ? treatment.limit() : null,
        "side", isFolded || kind == CornerTreatment.Kind.SQUARE ? treatment.side() : null,
        "folds", isFolded ? treatment.folds() : null);
  }

  private static Map<String, Object> of(Notch notch) {
    return fields("edge", notch.edge(), "along", notch.along(), "label", notch.label());
  }

  private static Map<String, Object> of(MarkingLine marking) {
    return fields("label", marking.label(), "curve", CurveFields.of(marking.curve()));
  }

  private static Map<String, Object> of(Seam seam) {
    Map<String, Object> fields =
        fields(
            "name", seam.name(),
            "first", seam.first().stream().map(EdgeRef::toString).toList(),
            "second", seam.second().stream().map(EdgeRef::toString).toList(),
            "ease", seam.ease(),
            "endToStart", seam.isEndToStart(),
            "fullness",
                seam.fullness().equals(Fullness.eased()) ? null : seam.fullness().toString());
    if (seam.isLapped()) {
      fields.put("lapped", true);
    }
    return fields;
  }

  private static Map<String, Object> of(SharedPaper paper) {
    return fields("name", paper.name(), "outer", paper.outerPiece(), "inner", paper.innerPiece());
  }

  Pattern read(Node node) {
    Node stored = node.get("pieces");
    List<Piece> pieces = stored.placed(() -> Fineness.checked(stored.list(this::piece)));
    List<Seam> seams = node.get("seams").list(PatternFields::seam);
    return node.placed(
        () -> {
          Pattern pattern =
              Pattern.of(node.get("name").text(), pieces, seams)
                  .withVersion(node.get("version").text())
                  .withSeamTolerance(node.get("seamTolerance").length())
                  .withCrossingTolerance(node.get("crossingTolerance").radians());
          for (SharedPaper paper : node.get("sharedPapers").list(PatternFields::sharedPaper)) {
            pattern = pattern.withSharedPaper(paper);
          }
          for (Patch patch : PatchFields.patches(node)) {
            pattern = pattern.withPatch(patch);
          }
          for (Placket placket : PatchFields.plackets(node)) {
            pattern = pattern.withPlacket(placket);
          }
          return pattern;
        });
  }

  private Piece piece(Node node) {
    List<Edge> edges = node.get("edges").list(this::edge);
    return node.placed(
        () -> {
          Piece piece =
              Piece.of(node.get("name").text(), edges)
                  .withCutting(cutting(node))
                  .withCloth(node.get("cloth").text())
                  .withGrain(node.get("grain").radians());
          for (Notch notch : node.get("notches").list(PatternFields::notch)) {
            piece = piece.withNotch(notch);
          }
          for (MarkingLine marking : node.get("markings").list(PatternFields::marking)) {
            piece = piece.withMarking(marking);
          }
          for (Node corner : node.get("corners").list(corner -> corner)) {
            piece = withCorner(piece, corner);
          }
          return piece;
        });
  }

  private static Cutting cutting(Node node) {
    int times = node.get("times").count();
    return switch (node.get("cut").constant(Cutting.Kind.class)) {
      case ON_FOLD -> Cutting.onFold(times);
      case PAIRS -> Cutting.pairs(times);
      case SINGLE -> Cutting.single(times);
    };
  }

  private Edge edge(Node node) {
    return node.placed(
        () ->
            Fineness.checked(Edge.of(node.get("name").text(), CurveFields.read(node.get("curve"))))
                .withFinish(finishes.read(node.get("finish"))));
  }

  private static Piece withCorner(Piece piece, Node corner) {
    String before = corner.get("before").text();
    String after = corner.get("after").text();
    Piece pointed = corner.get("pointed").truth() ? piece.withPointedCorner(before, after) : piece;
    return corner
        .find("treatment")
        .map(treatment -> pointed.withCorner(before, after, treatment(treatment)))
        .orElse(pointed);
  }

  private static CornerTreatment treatment(Node node) {
    return node.placed(
        () ->
            switch (node.get("kind").constant(CornerTreatment.Kind.class)) {
              case MITRE -> CornerTreatment.mitre(node.get("limit").number());
              case SQUARE -> CornerTreatment.squareTo(side(node));
              case BEVEL -> CornerTreatment.bevel();
              case ROUND -> CornerTreatment.round();
              case STEP -> CornerTreatment.step();
              case FOLDED_BACK ->
                  CornerTreatment.foldedBack(side(node), node.get("folds").list(Node::length));
            });
  }

  private static CornerSide side(Node node) {
    return node.get("side").constant(CornerSide.class);
  }

  private static Notch notch(Node node) {
    return node.placed(
        () ->
            Notch.of(
                node.get("edge").text(), node.get("along").length(), node.get("label").text()));
  }

  private static MarkingLine marking(Node node) {
    return node.placed(
        () -> MarkingLine.of(node.get("label").text(), CurveFields.read(node.get("curve"))));
  }

  private static Seam seam(Node node) {
    List<EdgeRef> first = node.get("first").list(PatternFields::edgeRef);
    List<EdgeRef> second = node.get("second").list(PatternFields::edgeRef);
    String name = node.get("name").text();
    Length ease = node.get("ease").length();
    boolean endToStart = node.get("endToStart").truth();
    boolean lapped = node.find("lapped").map(Node::truth).orElse(false);
    Fullness fullness =
        node.find("fullness")
            .map(field -> field.placed(() -> Fullness.parse(field.text())))
            .orElse(Fullness.eased());
    return node.placed(
        () -> {
          if (first.size() == 1 && first.equals(second)) {
            return Seam.mirrored(name, first.get(0));
          }
          Seam seam =
              (lapped ? lapped(name, first, second) : Seam.of(name, first, second))
                  .withEase(ease)
                  .drawnIn(fullness);
          return endToStart ? seam.endToStart() : seam;
        });
  }

  private static Seam lapped(String name, List<EdgeRef> over, List<EdgeRef> under) {
    return Seam.lapped(name, over.get(0).toString(), under.get(0).toString());
  }

  private static EdgeRef edgeRef(Node node) {
    return node.placed(() -> EdgeRef.parse(node.text()));
  }

  private static SharedPaper sharedPaper(Node node) {
    return node.placed(
        () ->
            SharedPaper.of(
                node.get("name").text(), node.get("outer").text(), node.get("inner").text()));
  }
}
