package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.finding.Place;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Lists what is sewn, with the stitch that the machines have for it. */
final class SewnLines {
  static final String TOPSTITCHING = ", topstitching";

  private final Pattern pattern;
  private final Function<String, Fabric> fabrics;
  private final Machines machines;

  SewnLines(Pattern pattern, Function<String, Fabric> fabrics, Machines machines) {
    this.pattern = pattern;
    this.fabrics = fabrics;
    this.machines = machines;
  }

  List<SewnLine> lines(List<Opening> openings, List<Strip> strips) {
    List<SewnLine> lines = new ArrayList<>();
    pattern.seams().forEach(seam -> lines.add(seam(seam)));
    pattern.patches().forEach(patch -> addPatch(patch, lines));
    pattern.plackets().forEach(placket -> lines.add(placket(placket)));
    for (Strip strip : strips) {
      lines.add(strip(strip));
      if (!strip.finish().profile().topstitch().isEmpty()) {
        lines.add(topstitching(strip.name(), strip.opening(), strip.fabric()));
      }
    }
    for (Opening opening : openings) {
      boolean banded = strips.stream().anyMatch(strip -> strip.opening().equals(opening));
      if (!banded && !(opening.finish() instanceof RawEdge)) {
        addEdge(opening, lines);
      }
    }
    return List.copyOf(lines);
  }

  private SewnLine seam(Seam seam) {
    Fabric fabric = fabric(seam.first().get(0));
    Length length =
        seam.first().stream()
            .map(edge -> pattern.edge(edge).length())
            .reduce(Length.ZERO, Length::plus);
    return SewnLine.of(
        seam.name(),
        Place.seam(seam.name()),
        machines.stitchOfSeam(seam.name()),
        seam.isLapped() ? SeamClass.LAPPED : SeamClass.SUPERIMPOSED,
        length,
        times(seam),
        fabric.name(),
        SeamRun.stretch(fabric, SeamRun.isAcross(pattern, seam)));
  }

  /** A seam is sewn right and left, but for centre seams and those of single pieces. */
  private int times(Seam seam) {
    Cutting.Kind kind = pattern.piece(seam.first().get(0).piece()).cutting().kind();
    return seam.isMirrored() || kind == Cutting.Kind.SINGLE ? 1 : 2;
  }

  /** The open edges that are finished, and the line that holds the patch. */
  private void addPatch(Patch patch, List<SewnLine> lines) {
    for (EdgeRef open : PatchSteps.openEdges(patch)) {
      Finish finish = pattern.edge(open).finish();
      if (!(finish instanceof RawEdge)) {
        lines.add(
            ofPatch(
                open.toString(),
                Place.edge(open.piece(), open.edge()),
                hem(open.edge(), finish),
                SeamClass.EDGE_FINISHING,
                List.of(open)));
      }
    }
    lines.add(
        ofPatch(
            PatchSteps.line(patch),
            Place.piece(patch.piece()),
            machines.stitchOfHem(patch.piece()),
            SeamClass.LAPPED,
            patch.stitchedEdges(pattern)));
  }

  private SewnLine ofPatch(
      String name, Place place, Stitch stitch, SeamClass seamClass, List<EdgeRef> edges) {
    Piece piece = pattern.piece(edges.get(0).piece());
    Fabric fabric = fabric(edges.get(0));
    Length length =
        edges.stream().map(edge -> pattern.edge(edge).length()).reduce(Length.ZERO, Length::plus);
    return SewnLine.of(
        name,
        place,
        stitch,
        seamClass,
        length,
        (piece.isOnFold() ? 2 : 1) * piece.cutting().pieces(),
        fabric.name(),
        SeamRun.stretch(fabric, SeamRun.isAcross(pattern, edges)));
  }

  /** Both sides and the end of its box, on cloth that is stayed. */
  private SewnLine placket(Placket placket) {
    Piece piece = pattern.piece(placket.edge().piece());
    return SewnLine.of(
        PlacketSteps.line(placket),
        Place.edge(placket.edge().piece(), placket.edge().edge()),
        Stitch.of(StitchType.LOCKSTITCH),
        SeamClass.SUPERIMPOSED,
        placket.length().times(2).plus(placket.width()),
        piece.cutting().pieces(),
        fabric(placket.edge()).name(),
        0);
  }

  private SewnLine strip(Strip strip) {
    Opening opening = strip.opening();
    boolean bound = strip.finish() instanceof WrappedBinding;
    return SewnLine.of(
        strip.name(),
        Place.strip(strip.name()),
        bound ? machines.stitchOfBinding(opening.name()) : machines.stitchOfSeam(opening.name()),
        bound ? SeamClass.BOUND : SeamClass.SUPERIMPOSED,
        strip.joinLine(),
        1,
        strip.fabric().name(),
        Math.min(strip.fabric().stretchAcross(), stretch(opening)));
  }

  private SewnLine topstitching(String name, Opening opening, Fabric fabric) {
    return SewnLine.of(
        name + TOPSTITCHING,
        Place.opening(opening.name()),
        machines.stitchOfHem(opening.name()),
        SeamClass.DECORATIVE,
        opening.length(),
        1,
        fabric.name(),
        stretch(opening));
  }

  /** An edge without a strip: turned up, or faced and turned in. */
  private void addEdge(Opening opening, List<SewnLine> lines) {
    Finish finish = opening.finish();
    Fabric fabric = fabric(opening.parts().get(0).edge());
    boolean sewnOn = finish.profile().join().isPresent();
    lines.add(
        SewnLine.of(
            opening.name(),
            Place.opening(opening.name()),
            sewnOn ? machines.stitchOfSeam(opening.name()) : hem(opening.name(), finish),
            sewnOn ? SeamClass.SUPERIMPOSED : SeamClass.EDGE_FINISHING,
            opening.length(),
            1,
            fabric.name(),
            stretch(opening)));
    if (sewnOn && !finish.profile().topstitch().isEmpty()) {
      lines.add(topstitching(opening.name(), opening, fabric));
    }
  }

  /** A hem that is drawn with two rows takes a twin needle, whatever else is at hand. */
  private Stitch hem(String name, Finish finish) {
    Stitch stitch = machines.stitchOfHem(name);
    return finish instanceof TurnedHem hem && hem.twinGap().isPositive() && !stitch.hasRows()
        ? Stitch.of(StitchType.TWIN_NEEDLE).withWidth(hem.twinGap())
        : stitch;
  }

  private double stretch(Opening opening) {
    List<EdgeRef> edges = opening.parts().stream().map(OpeningPart::edge).toList();
    return SeamRun.stretch(fabric(edges.get(0)), SeamRun.isAcross(pattern, edges));
  }

  private Fabric fabric(EdgeRef edge) {
    return fabrics.apply(pattern.piece(edge.piece()).cloth());
  }
}
