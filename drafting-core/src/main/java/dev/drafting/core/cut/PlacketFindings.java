package dev.drafting.core.cut;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Placket;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** What is wrong with the plackets of a pattern where they lie on the cloth. */
final class PlacketFindings {
  private static final double SAME_LINE_MM = 0.05;
  private static final Length FLAT = Length.mm(0.005);

  private final Pattern pattern;
  private final Placket placket;
  private final Place place;

  private PlacketFindings(Pattern pattern, Placket placket) {
    this.pattern = pattern;
    this.placket = placket;
    this.place = Place.edge(placket.edge().piece(), placket.edge().edge());
  }

  static List<Finding> of(Pattern pattern, Map<String, CutPiece> cut) {
    List<Finding> findings = new ArrayList<>();
    for (Placket placket : pattern.plackets()) {
      PlacketFindings of = new PlacketFindings(pattern, placket);
      @Nullable CutPiece base = cut.get(placket.edge().piece());
      if (base != null && !of.isWithin(base)) {
        findings.add(of.reachesOut());
      }
      if (!placket.belowFinish(pattern).isPositive()) {
        findings.add(of.tooShort());
      }
      if (placket.isAcrossGrain(pattern)) {
        findings.add(of.acrossGrain());
      }
    }
    return findings;
  }

  /** Strips are sewn within the piece; of its seams only that of the edge itself is crossed. */
  private boolean isWithin(CutPiece base) {
    Geometry box = JtsBridge.toPolygon(placket.outline(pattern), FLAT).buffer(-SAME_LINE_MM);
    return JtsBridge.toPolygon(base.piece().outline(), FLAT).buffer(0).covers(box)
        && JtsBridge.toPolygon(base.cutLine(), FLAT).buffer(0).covers(box)
        && base.lines().stream()
            .filter(line -> line.role() == LineRole.JOIN)
            .filter(line -> !line.edge().equals(placket.edge().edge()))
            .noneMatch(line -> JtsBridge.toJts(line.curve(), FLAT).intersects(box));
  }

  private Finding reachesOut() {
    return Finding.problem(
            "placket.reaches-out",
            place,
            "the placket, "
                + mm(placket.length())
                + " long and "
                + mm(placket.width())
                + " wide, reaches beyond "
                + placket.edge().piece()
                + " or across a seam of it")
        .withRemedy(Remedy.of("Make it shorter or narrower, or open the edge farther in."));
  }

  private Finding tooShort() {
    Length band = placket.length().minus(placket.belowFinish(pattern));
    return Finding.problem(
            "placket.too-short",
            place,
            "the placket is "
                + mm(placket.length())
                + " long and ends within what is sewn on the edge, which shows "
                + mm(band))
        .withRemedy(
            Remedy.of("Make it longer than " + mm(band.plus(placket.width())) + ".")
                .with("placket.length", band.plus(placket.width()).toString()));
  }

  private Finding acrossGrain() {
    return Finding.warning(
            "placket.across-grain",
            place,
            "the placket runs across the grain of "
                + placket.edge().piece()
                + ", the way in which a knit stretches most, and will gape")
        .withRemedy(Remedy.of("Turn the grain of " + placket.edge().piece() + " along it."))
        .withRemedy(
            Remedy.of(
                "Press a stay that does not stretch on the piece and on both strips, before"
                    + " anything is cut."));
  }

  private static String mm(Length length) {
    return length.text(LengthUnit.MM, 0);
  }
}
