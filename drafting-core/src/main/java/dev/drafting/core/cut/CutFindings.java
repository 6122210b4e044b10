package dev.drafting.core.cut;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.offset.Trimming;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SharedPaper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** Says what cannot be cut well, and what to do about it. */
final class CutFindings {
  private static final double NOT_WORTH_A_WORD_MM = 0.5;
  private static final int SAMPLES = 64;
  private static final double SAME_LINE_MM = 0.05;
  private static final Length FLAT = Length.mm(0.005);

  private final List<Finding> findings = new ArrayList<>();

  List<Finding> list() {
    return List.copyOf(findings);
  }

  /** Edges that are sewn but have nothing to sew through. */
  void checkSeams(Pattern pattern) {
    for (Seam seam : pattern.seams()) {
      List<EdgeRef> edges = new ArrayList<>(seam.first());
      if (!seam.isMirrored()) {
        edges.addAll(seam.second());
      }
      for (EdgeRef ref : edges) {
        if (pattern.edge(ref).finish().profile().join().isEmpty()) {
          addNoAllowance(seam, ref, pattern.edge(ref));
        }
      }
    }
  }

  private void addNoAllowance(Seam seam, EdgeRef ref, Edge edge) {
    findings.add(
        Finding.warning(
                "seam.no-allowance",
                Place.edge(ref.piece(), ref.edge()),
                "the edge is sewn in the "
                    + seam.name()
                    + " seam but finished as "
                    + edge.finish().describe()
                    + ", without a join line")
            .withRemedy(
                Remedy.of("Give the edge a seam allowance, such as 7 mm for an overlock.")
                    .with("finish", "seam")
                    .with("allowance", "7 mm")));
  }

  /** Allowances and hems that do not fit round the curves of their edges. */
  void checkTrimmings(Piece piece, OffsetResult cut) {
    Map<String, Length> lost = new LinkedHashMap<>();
    Map<String, Trimming> first = new LinkedHashMap<>();
    for (Trimming trimming : cut.trimmings()) {
      lost.merge(trimming.edge(), trimming.lost(), Length::plus);
      first.putIfAbsent(trimming.edge(), trimming);
    }
    first.forEach(
        (edge, trimming) -> {
          Length all = lost.getOrDefault(edge, Length.ZERO);
          if (all.toMm() > NOT_WORTH_A_WORD_MM) {
            addTooWide(piece, piece.edge(edge), trimming, all);
          }
        });
  }

  private void addTooWide(Piece piece, Edge edge, Trimming trimming, Length lost) {
    Length distance = CutOutline.cutDistance(edge);
    Finding finding =
        Finding.warning(
            "allowance.too-wide",
            Place.edge(piece.name(), edge.name()),
            "the cut line lies "
                + distance.abs().text(LengthUnit.MM)
                + (distance.isNegative() ? " inside" : " outside")
                + " the finished edge, and "
                + trimming.reason()
                + ": "
                + lost.text(LengthUnit.MM)
                + " of the edge have no cut line of their own");
    double room = room(edge, distance.isNegative());
    if (trimming.cause() == Trimming.Cause.TIGHT_CURVE && room > 1) {
      String most = Length.mm(Math.ceil(room) - 1).text(LengthUnit.MM);
      finding =
          finding.withRemedy(
              Remedy.of("Let the cut line lie " + most + " from the finished edge at most.")
                  .with("edge", piece.name() + " / " + edge.name())
                  .with("distance.at-most", most));
    }
    findings.add(
        finding.withRemedy(
            Remedy.of(
                    "Draw the curve of "
                        + edge.name()
                        + " wider, or finish the edge with a"
                        + " narrower allowance or a binding.")
                .with("edge", piece.name() + " / " + edge.name())));
  }

  /** How far a parallel may lie before the tightest bend of the edge folds over. */
  private static double room(Edge edge, boolean inside) {
    double sharpest = 0;
    for (Segment segment : edge.curve().segments()) {
      for (int i = 0; i <= SAMPLES; i++) {
        double curvature = segment.curvatureAt((double) i / SAMPLES);
        sharpest = Math.max(sharpest, inside ? curvature : -curvature);
      }
    }
    return sharpest == 0 ? 0 : 1 / sharpest;
  }

  /** Edges for one of whose lines there is no room on the piece. */
  void addWithoutRoom(Piece piece, List<String> edges) {
    for (String edge : edges) {
      findings.add(
          Finding.warning(
                  "allowance.too-wide",
                  Place.edge(piece.name(), edge),
                  "there is no room on the piece for all lines of the finish: "
                      + piece.edge(edge).finish().describe())
              .withRemedy(
                  Remedy.of("Choose a narrower finish for " + edge + ".")
                      .with("edge", piece.name() + " / " + edge)));
    }
  }

  /** A piece that has no cut line at all. */
  void addNotCut(Piece piece, String reason) {
    findings.add(
        Finding.problem(
                "piece.cannot-be-cut",
                Place.piece(piece.name()),
                "no cut line can be drawn round the piece: " + reason)
            .withRemedy(
                Remedy.of("Redraw the outline without crossings, or make the allowances narrower.")
                    .with("piece", piece.name())));
  }

  /** Patches that do not lie wholly on the cloth beneath, within its seams and its edges. */
  void checkPatches(Pattern pattern, Map<String, CutPiece> cut) {
    for (Patch patch : pattern.patches()) {
      @Nullable CutPiece base = cut.get(patch.base());
      Geometry laid = JtsBridge.toPolygon(patch.outline(pattern), FLAT).buffer(-SAME_LINE_MM);
      if (base != null && !isWithin(laid, base)) {
        addPatchReachesOut(patch);
      }
    }
  }

  void checkPlackets(Pattern pattern, Map<String, CutPiece> cut) {
    findings.addAll(PlacketFindings.of(pattern, cut));
  }

  private static boolean isWithin(Geometry laid, CutPiece base) {
    return JtsBridge.toPolygon(base.piece().outline(), FLAT).buffer(0).covers(laid)
        && JtsBridge.toPolygon(base.cutLine(), FLAT).buffer(0).covers(laid)
        && base.lines().stream()
            .filter(line -> line.role() == LineRole.JOIN)
            .noneMatch(line -> JtsBridge.toJts(line.curve(), FLAT).intersects(laid));
  }

  private void addPatchReachesOut(Patch patch) {
    findings.add(
        Finding.problem(
                "patch.reaches-out",
                Place.piece(patch.piece()),
                patch.piece()
                    + " reaches beyond "
                    + patch.base()
                    + ", on which it is stitched, or across a seam of it")
            .withRemedy(
                Remedy.of("Move it inwards on " + patch.base() + ", or draw it smaller.")
                    .with("patch", patch.piece())));
  }

  /** An inner piece that does not lie on the paper of the outer one. */
  void addReachesOut(SharedPaper paper) {
    findings.add(
        Finding.problem(
                "paper.too-small",
                Place.piece(paper.innerPiece()),
                paper.innerPiece()
                    + " reaches beyond "
                    + paper.outerPiece()
                    + ", on whose paper it is marked")
            .withRemedy(
                Remedy.of(
                        "Let "
                            + paper.outerPiece()
                            + " be marked on "
                            + paper.innerPiece()
                            + " instead, or draw each on a paper of its own.")
                    .with("paper", paper.name())));
  }
}
