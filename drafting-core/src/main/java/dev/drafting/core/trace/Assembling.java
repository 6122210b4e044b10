package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/** Finds the corners of a fitted outline, closes it exactly and reports on it. */
final class Assembling {
  private final Outline outline;
  private final Length roughness;

  Assembling(Outline outline, Length roughness) {
    this.outline = outline;
    this.roughness = roughness;
  }

  TruedPiece result() {
    OutlineFit fit = new OutlineFit(outline);
    double lowest = outline.grounded() ? fit.track(0).cy[0] : 0;
    Transform lower = Transform.translation(new Vector(0, -lowest));
    List<Curve> curves = new ArrayList<>();
    List<EdgeReport> reports = new ArrayList<>();
    List<Lopsidedness> lopsidedness = new ArrayList<>();
    for (int i = 0; i < outline.edges().size(); i++) {
      FittedEdge edge = outline.edges().get(i);
      Track track = fit.track(i);
      curves.add(Curve.of(track.segments()).map(lower));
      reports.add(new Measuring(edge, track, lower).report(fit.lengthDeviation(i)));
      if (edge.lopsidedness() != null) {
        lopsidedness.add(edge.lopsidedness().lowered(lowest));
      }
    }
    TruingReport report =
        new TruingReport(
            outline.piece(),
            reports,
            lopsidedness,
            new TruingFindings(outline, roughness).all(),
            Length.mm(outline.noise().mm),
            outline.placement().then(lower));
    return new TruedPiece(piece(curves), report);
  }

  private Piece piece(List<Curve> curves) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      edges.add(Edge.of(outline.edges().get(i).name(), curves.get(i)));
    }
    return outline.folded() ? onFold(curves, edges) : Piece.of(outline.piece(), edges);
  }

  private Piece onFold(List<Curve> curves, List<Edge> open) {
    List<Edge> edges = new ArrayList<>(open);
    Point top = curves.get(curves.size() - 1).end();
    Point bottom = curves.get(0).start();
    if (!(top.y() > bottom.y())) {
      throw DraftingException.of("the edges leave no fold between them")
          .at(outline.piece())
          .value("from y = " + bottom.y() + " to y = " + top.y() + " mm")
          .accepted("a fold with its upper end above its lower end");
    }
    edges.add(Edge.onFold(Curve.line(top, bottom)));
    Piece piece = Piece.of(outline.piece(), edges);
    FittedEdge first = outline.edges().get(0);
    FittedEdge last = outline.edges().get(outline.edges().size() - 1);
    if (!last.ends().end().isLevel()) {
      piece = piece.withPointedCorner(last.name(), "fold");
    }
    return first.ends().start().isLevel() ? piece : piece.withPointedCorner("fold", first.name());
  }
}
