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
    List<Point> corners = corners();
    double lowest = outline.grounded() ? corners.get(0).y() : 0;
    Transform lower = Transform.translation(new Vector(0, -lowest));
    List<Curve> curves = new ArrayList<>();
    List<EdgeReport> reports = new ArrayList<>();
    List<Lopsidedness> lopsidedness = new ArrayList<>();
    for (int i = 0; i < outline.edges().size(); i++) {
      FittedEdge edge = outline.edges().get(i);
      Ends ends =
          new Ends(
              edge.ends().start().at(corners.get(i)), edge.ends().end().at(corners.get(i + 1)));
      EdgeFit fit = edge.fit().between(ends);
      curves.add(fit.curve().map(lower));
      reports.add(new Measuring(edge, fit, lower).report());
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

  private List<Point> corners() {
    List<FittedEdge> edges = outline.edges();
    FittedEdge first = edges.get(0);
    FittedEdge last = edges.get(edges.size() - 1);
    List<Point> corners = new ArrayList<>();
    corners.add(outline.folded() ? first.fit().curve().start() : Corners.between(last, first));
    for (int i = 1; i < edges.size(); i++) {
      corners.add(Corners.between(edges.get(i - 1), edges.get(i)));
    }
    corners.add(outline.folded() ? last.fit().curve().end() : corners.get(0));
    return corners;
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
