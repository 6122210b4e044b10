package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripPiece;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** What comes before the first seam (common practice, no source). */
final class Preparation {
  private Preparation() {}

  static List<Step> steps(Pattern pattern, List<Strip> strips, Collection<Fabric> fabrics) {
    List<Step> steps = new ArrayList<>();
    steps.add(Step.of("Prewash", washing(fabrics)).showing(Step.Scene.WASHING));
    steps.add(
        Step.of(
                "Let the cloth rest",
                "Lay it flat for 12 to 24 hours with nothing hanging over the table's edge.")
            .showing(Step.Scene.RESTING));
    steps.add(Step.of("Test the stretch", stretchTest(fabrics)).showing(Step.Scene.STRETCHING));
    steps.add(
        Step.of(
                "Print and check the square",
                "Print the first sheet alone, at true size, and measure its squares: 100 mm and 4 in,"
                    + " to half a millimetre. Only then print the rest and join the sheets.")
            .showing(Step.Scene.PRINTING));
    List<EdgeRef> edges = edges(pattern);
    steps.add(
        Step.of("Cut", cutting(pattern, strips, fabrics))
            .withCaution(Cautions.BLADES)
            .showing(edges));
    steps.add(
        Step.of("Mark", marking(strips))
            .withCaution(Cautions.PINS)
            .showing(strips.isEmpty() ? edges : edges(strips)));
    steps.add(
        Step.of(
                "Sew a scrap",
                "Sew a seam, a piece of strip and a hem on scraps of the same cloth, pull them as"
                    + " far as they will be pulled in wear, and press them. Go on when no stitch"
                    + " breaks and nothing waves.")
            .withCaution(Cautions.IRON)
            .showing(Step.Scene.SCRAP));
    return steps;
  }

  private static List<EdgeRef> edges(Pattern pattern) {
    return pattern.pieces().stream()
        .flatMap(
            piece ->
                piece.edges().stream()
                    .filter(edge -> !edge.isOnFold())
                    .map(edge -> new EdgeRef(piece.name(), edge.name())))
        .toList();
  }

  private static List<EdgeRef> edges(List<Strip> strips) {
    return strips.stream()
        .flatMap(strip -> strip.opening().parts().stream())
        .map(OpeningPart::edge)
        .distinct()
        .toList();
  }

  /** Cloth that is drawn larger for its wash must not be washed before. */
  private static String washing(Collection<Fabric> fabrics) {
    List<String> sentences = new ArrayList<>();
    String wash = names(fabrics, true);
    if (!wash.isEmpty()) {
      sentences.add("Wash and dry " + wash + " as the garment will be washed and dried.");
    }
    String leave = names(fabrics, false);
    if (!leave.isEmpty()) {
      sentences.add(
          "Do not wash " + leave + ": what is cut from it is drawn larger and washes to size.");
    }
    return String.join(" ", sentences);
  }

  private static String names(Collection<Fabric> fabrics, boolean washed) {
    return fabrics.stream()
        .filter(fabric -> fabric.shrinkageToCome().isNone() == washed)
        .map(Fabric::name)
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private static String stretchTest(Collection<Fabric> fabrics) {
    String counted =
        fabrics.stream()
            .distinct()
            .map(fabric -> fabric.name() + " " + Wording.percent(fabric.stretchAcross()))
            .collect(Collectors.joining(", "));
    return "Fold the cloth across, pin 10 cm in its middle, pull as far as it goes easily, let go."
        + " This plan counts on "
        + counted
        + " across. If yours differs by more than 5 points, or does not come back, put your"
        + " reading in and draft again.";
  }

  private static String cutting(Pattern pattern, List<Strip> strips, Collection<Fabric> fabrics) {
    String pieces =
        pattern.withPlacketPieces().pieces().stream()
            .map(piece -> piece.name() + " (" + cutting(piece) + ")")
            .collect(Collectors.joining(", "));
    String text =
        "Lay all pieces the same way up, their grain along the cloth, so that the greatest stretch"
            + " goes round the body. Cut "
            + pieces
            + ".";
    if (!strips.isEmpty()) {
      text += " Cut the strips along the greatest stretch: " + sizes(strips) + ".";
    }
    if (fabrics.stream().map(Fabric::structure).anyMatch(Structure::curls)) {
      text += " Single jersey curls at its cut edges: weight them.";
    }
    return text;
  }

  private static String cutting(Piece piece) {
    return piece.cutting().describe().replaceFirst("^cut ", "");
  }

  private static String sizes(List<Strip> strips) {
    return strips.stream()
        .flatMap(strip -> strip.pieces().stream().map(piece -> size(piece, strip.cutWidth())))
        .collect(Collectors.joining(", "));
  }

  private static String size(StripPiece piece, Length width) {
    String times = piece.count() == 1 ? " " : " " + piece.count() + " x ";
    return piece.name() + times + Wording.amount(piece.length()) + " by " + Wording.fine(width);
  }

  private static String laps(List<Strip> strips) {
    return strips.stream()
        .filter(strip -> strip.rule().lap().isPositive() && strip.rule().joinAt().isPresent())
        .map(
            strip ->
                " Of the "
                    + strip.name()
                    + " leave "
                    + Wording.fine(strip.rule().lap().dividedBy(2))
                    + " before the first and after the last mark, which lap at the placket.")
        .collect(Collectors.joining());
  }

  private static String marking(List<Strip> strips) {
    String pieces = "Transfer the notches and the centre front and back.";
    return strips.isEmpty()
        ? pieces
        : pieces
            + " Mark each strip in four equal lengths between its two ends' allowances, and each"
            + " opening in four equal lengths along its seam."
            + laps(strips);
  }
}
