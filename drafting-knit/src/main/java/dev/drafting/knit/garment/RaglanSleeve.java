package dev.drafting.knit.garment;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The sleeve between two raglan lines: each of its raglan edges is as long as the body's, and both
 * halves together are as wide at the underarm as given. The underarm lies at height 0.
 */
final class RaglanSleeve {
  private static final double EXACT_MM = 1e-9;
  private static final int MOST_STEPS = 200;
  private static final double STRAIGHT = 0.7;
  private static final double FLATTEST = 0.1;

  private final Half front;
  private final Half back;
  private final double halfWidth;
  private final Point wrist;
  private final Point straightTo;
  private final Vector square;

  /** One half, drawn to the right of the overarm line, its neck point at (0, 0). */
  private record Half(Curve neck, Vector arriving, double seam) {
    static Half of(RaglanHalf body) {
      return new Half(body.sleeveNeck(), body.arrivingAtNeck(), body.raglanLength().toMm());
    }

    Curve raglan(double width, double height, Vector square) {
      Point end = neck.end().plus(new Vector(0, height));
      return RaglanHalf.raglan(new Point(width, 0), square, end, arriving);
    }

    /** How wide this half is at the underarm when the neck point is so high above it. */
    double width(double height, Vector square) {
      double least = neck.end().x();
      if (over(least, height, square) >= 0) {
        return least;
      }
      return new BrentSolver(EXACT_MM)
          .solve(MOST_STEPS, w -> over(w, height, square), least, least + 2 * seam);
    }

    private double over(double width, double height, Vector square) {
      return raglan(width, height, square).length().toMm() - seam;
    }

    /** How far the raglan line's end lies below the neck point. */
    double fall() {
      return -neck.end().y();
    }
  }

  RaglanSleeve(Dimensions given, RaglanHalf frontBody, RaglanHalf backBody) {
    this.front = Half.of(frontBody);
    this.back = Half.of(backBody);
    this.halfWidth = given.length("sleeve width").toMm();
    double down = given.length("sleeve length").toMm();
    this.wrist = new Point(given.length("wrist").toMm(), -down);
    this.straightTo = wrist.plus(new Vector(0, (1 - STRAIGHT) * down));
    this.square = new Point(halfWidth, 0).minus(straightTo).unit().left();
  }

  Piece piece(String name) {
    double height = height();
    double ahead = front.width(height, square);
    double behind = back.width(height, square);
    Transform up = Transform.translation(new Vector(0, height));
    Transform across = Transform.translation(new Vector((behind - ahead) / 2, 0));
    Curve underarm = underarm((behind + ahead) / 2);
    Piece piece =
        Piece.of(
            name,
            List.of(
                Edge.of("wrist", Curve.line(wrist.mirrored(), wrist).map(across)),
                Edge.of("back underarm", underarm.map(across)),
                Edge.of("back raglan", back.raglan(behind, height, square)),
                Edge.of("neck", neck().map(up)),
                Edge.of("front raglan", front.raglan(ahead, height, square).mirrored().reversed()),
                Edge.of("front underarm", underarm.mirrored().reversed().map(across))));
    Piece notched = RaglanHalf.notched(piece, "front raglan", 1, false);
    return RaglanHalf.notched(notched, "back raglan", 2, true).withCutting(Cutting.pairs(1));
  }

  private Curve neck() {
    return back.neck().reversed().then(front.neck().mirrored());
  }

  /** Upright at the wrist, so that the end of the sleeve is square to it, then straight. */
  private Curve underarm(double width) {
    Point end = new Point(width, 0);
    return Curve.of(new Cubic(wrist, straightTo, straightTo.midpoint(end), end));
  }

  /** How high the neck point lies above the underarm. */
  private double height() {
    double fall = Math.max(front.fall(), back.fall());
    double seam = Math.max(front.seam(), back.seam());
    double low = fall + FLATTEST * seam;
    double high = fall + seam;
    if (over(low) <= 0) {
      throw DraftingException.of("the sleeve is too wide for its raglan lines")
          .at("sleeve width")
          .value(Length.mm(halfWidth))
          .accepted("a narrower sleeve, or a deeper armhole");
    }
    return new BrentSolver(EXACT_MM).solve(MOST_STEPS, this::over, low, high);
  }

  private double over(double height) {
    return front.width(height, square) + back.width(height, square) - 2 * halfWidth;
  }
}
