package dev.drafting.export.drawing;

import dev.drafting.core.Experimental;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.core.pattern.SharedPaper;
import dev.drafting.knit.Draft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Where two pieces share one paper: the lines in which the inner piece differs, such as its lower
 * neckline, each as a small paper of its own, with the edges of the shared paper around it to lay
 * it on by.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern().withSharedPaper(SharedPaper.of("front and back", "back", "front"));
 * Draft draft = Draft.of(top).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * TransferDrawing.of(draft).get(0).name();  // => neck of front
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class TransferDrawing {
  /** How much of the piece around the line is drawn. */
  private static final Length AROUND = Length.mm(35);

  private static final double FAR = 10_000;
  private static final Length SHORTEST = Length.mm(0.001);
  private static final Length LETTERS = Length.mm(3);
  private static final Length NAME = Length.mm(6);
  private static final String TRANSFER = ": transfer";

  private TransferDrawing() {}

  /**
   * The small papers of a draft.
   *
   * @param draft pattern and allowances
   * @return one group a line, where the piece lies; none if no paper is shared
   */
  public static List<Group> of(Draft draft) {
    List<Group> groups = new ArrayList<>();
    for (SharedPaper shared : draft.pattern().sharedPapers()) {
      piece(draft.cutPieces(), shared.name())
          .ifPresent(paper -> groups.addAll(groups(draft, shared, paper)));
    }
    return groups;
  }

  private static Optional<CutPiece> piece(List<CutPiece> pieces, String name) {
    return pieces.stream().filter(piece -> piece.name().equals(name)).findFirst();
  }

  private static List<Group> groups(Draft draft, SharedPaper shared, CutPiece paper) {
    String ending = " of " + shared.innerPiece() + TRANSFER;
    return paper.markings().stream()
        .filter(line -> line.label().endsWith(ending))
        .map(line -> group(draft.name(), shared, paper, line))
        .toList();
  }

  private static Group group(String garment, SharedPaper shared, CutPiece paper, MarkingLine line) {
    String name = line.label().substring(0, line.label().length() - TRANSFER.length());
    Box box = line.curve().bounds().widened(AROUND);
    List<Element> elements = new ArrayList<>();
    elements.add(new Stroke(StrokeStyle.CUT_LINE, name, line.curve()));
    for (Curve part : clipped(paper.cutLine(), box)) {
      elements.add(new Stroke(StrokeStyle.OVERLAP, "edge of " + shared.name(), part));
    }
    double y = box.minY() - NAME.toMm();
    double left = line.curve().bounds().minX() + 2;
    elements.add(Label.of(name, new Point(left, y), NAME));
    for (String words : words(garment, shared, name)) {
      y -= 2 * LETTERS.toMm();
      elements.add(Label.of(words, new Point(left, y), LETTERS));
    }
    return new Group(name, elements);
  }

  private static List<String> words(String garment, SharedPaper shared, String name) {
    String text =
        garment
            + ". Cut "
            + shared.innerPiece()
            + " by the paper "
            + shared.name()
            + ". Then cut this paper along the heavy line and lay it on the cloth, its dashed line"
            + " on the edges: the "
            + name
            + " runs along the heavy line.";
    return Lettering.wrap(text, LETTERS, Length.mm(110));
  }

  /** The stretches of a curve that lie in a box. */
  private static List<Curve> clipped(Curve curve, Box box) {
    TreeSet<Length> cuts = new TreeSet<>();
    for (Curve side : sides(box)) {
      curve.intersections(side).forEach(crossing -> cuts.add(crossing.along()));
    }
    List<Curve> parts = new ArrayList<>();
    Length from = Length.ZERO;
    cuts.add(curve.length());
    for (Length to : cuts) {
      if (to.minus(from).compareTo(SHORTEST) > 0) {
        Curve part = curve.between(from, to);
        if (box.contains(part.pointAt(part.length().dividedBy(2)))) {
          parts.add(part);
        }
        from = to;
      }
    }
    return parts;
  }

  private static List<Curve> sides(Box box) {
    return List.of(
        Curve.line(new Point(box.minX(), -FAR), new Point(box.minX(), FAR)),
        Curve.line(new Point(box.maxX(), -FAR), new Point(box.maxX(), FAR)),
        Curve.line(new Point(-FAR, box.minY()), new Point(FAR, box.minY())),
        Curve.line(new Point(-FAR, box.maxY()), new Point(FAR, box.maxY())));
  }
}
