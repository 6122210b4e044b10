package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import java.util.List;

/**
 * The strips of a placket, cut on their fold: as long as the opening and a little more, which is
 * cut even with the edge once they are sewn on (common practice, no source). The fasteners lie in
 * the middle of the placket, at even distances and half a distance from either end.
 */
final class PlacketStrips {
  private static final double TRIMMED_MM = 10;
  private static final double BUTTONHOLE_MM = 12;
  private static final double BUTTON_MM = 6;

  private final Placket placket;
  private final Piece base;
  private final double width;
  private final double height;
  private final double closed;

  PlacketStrips(Pattern pattern, Placket placket) {
    this.placket = placket;
    this.base = pattern.piece(placket.edge().piece());
    this.width = placket.width().toMm();
    this.height = PlacketPlace.of(pattern, placket).longest().toMm() + TRIMMED_MM;
    this.closed = placket.belowFinish(pattern).toMm();
  }

  static List<String> names(Placket placket) {
    String piece = placket.edge().piece();
    return List.of(piece + " overlap", piece + " underlap");
  }

  List<Piece> pieces() {
    List<String> names = names(placket);
    Piece overlap = strip(names.get(0));
    Piece underlap = strip(names.get(1));
    for (int i = 1; i <= placket.fasteners() && closed > 0; i++) {
      double up = closed * (placket.fasteners() - i + 0.5) / placket.fasteners();
      overlap =
          overlap.withMarking(
              fastener("hole " + i, 0, up - BUTTONHOLE_MM / 2, up + BUTTONHOLE_MM / 2));
      underlap = underlap.withMarking(fastener("button " + i, BUTTON_MM / 2, up, up));
    }
    return List.of(overlap, underlap);
  }

  private MarkingLine fastener(String label, double sideways, double from, double to) {
    double middle = width / 2;
    return MarkingLine.of(
        label, Curve.line(new Point(middle - sideways, from), new Point(middle + sideways, to)));
  }

  private Piece strip(String name) {
    Point foot = new Point(0, 0);
    Point corner = new Point(width, 0);
    Point high = new Point(width, height);
    Point top = new Point(0, height);
    SeamFinish sewnIn = SeamFinish.of(placket.allowance());
    return Piece.of(
            name,
            List.of(
                Edge.of("end", Curve.line(foot, corner)).withFinish(sewnIn),
                Edge.of("side", Curve.line(corner, high)).withFinish(sewnIn),
                Edge.of("top", Curve.line(high, top)),
                Edge.onFold(Curve.line(top, foot))))
        .withCutting(Cutting.onFold(base.cutting().pieces()))
        .withCloth(base.cloth());
  }
}
