package dev.drafting.core.trace;

import dev.drafting.core.Stable;
import dev.drafting.core.pattern.Piece;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A trued tracing: the piece, half on the fold or as it lies, and the report of how it came about.
 *
 * <pre>{@code
 * Tracing pocket = Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(TracedEdge.of("bottom", 0, 0, 20, 0.2, 40, -0.1, 60, 0), TracedEdge.of("side", 60, 0, 60.2, 30, 59.9, 60, 60, 80), TracedEdge.of("top", 60, 80, 40, 80.2, 20, 79.9, 0, 80)));
 * TruedPiece trued = Truing.of(pocket).result();
 * trued.piece().edge("side").length().text(LengthUnit.MM);  // => 80 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class TruedPiece implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Piece piece;
  private final TruingReport report;

  TruedPiece(Piece piece, TruingReport report) {
    this.piece = piece;
    this.report = report;
  }

  /**
   * The trued piece: the half at x above 0, its fold on x = 0, its edges counter-clockwise from the
   * lower end of the fold, the fold last. A piece traced as it lies stays where it lies and has no
   * fold. Every edge but the fold is a raw edge until it is given a finish.
   *
   * @return the piece
   */
  public Piece piece() {
    return piece;
  }

  /**
   * What was seen, refused and averaged.
   *
   * @return the report
   */
  public TruingReport report() {
    return report;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Piece piece, TruingReport report) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new TruedPiece(
          Objects.requireNonNull(piece, "piece"), Objects.requireNonNull(report, "report"));
    }
  }

  private Object writeReplace() {
    return new Kept(piece, report);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a trued piece is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TruedPiece that
        && piece.equals(that.piece)
        && report.equals(that.report);
  }

  @Override
  public int hashCode() {
    return Objects.hash(piece, report);
  }

  @Override
  public String toString() {
    return report.toString();
  }
}
