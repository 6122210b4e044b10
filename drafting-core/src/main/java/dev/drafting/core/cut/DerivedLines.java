package dev.drafting.core.cut;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Profile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The lines to sew, fold and topstitch of one piece. Lines of one role are laid out together, those
 * further from the edge after those nearer to it, each from cut edge to cut edge.
 */
final class DerivedLines {
  /** In degrees; a line drawn on beyond a smaller turn would run along inside the piece. */
  private static final double STRAIGHT_ON = 10;

  private final Piece piece;
  private final CutOutline outlines;
  private final OffsetResult cut;
  private final WithinCutLine within;
  private final List<DerivedLine> lines = new ArrayList<>();
  private final List<String> withoutRoom = new ArrayList<>();

  DerivedLines(Piece piece, OffsetResult cut) {
    this.piece = piece;
    this.outlines = new CutOutline(piece);
    this.cut = cut;
    this.within = new WithinCutLine(cut.outline());
    addRole(LineRole.JOIN);
    addRole(LineRole.FOLD);
    addRole(LineRole.TOPSTITCH);
  }

  List<DerivedLine> lines() {
    return List.copyOf(lines);
  }

  /** The edges for one of whose lines there is no room on the piece. */
  List<String> withoutRoom() {
    return List.copyOf(withoutRoom);
  }

  private void addRole(LineRole role) {
    for (int row = 0; ; row++) {
      Map<String, Length> distances = row(role, row);
      if (distances.isEmpty()) {
        return;
      }
      addRow(role, distances);
    }
  }

  /** The distances of the lines of one role, of every edge the one in this place. */
  private Map<String, Length> row(LineRole role, int row) {
    Map<String, Length> distances = new LinkedHashMap<>();
    for (Edge edge : piece.edges()) {
      List<Length> all = distances(edge.finish().profile(), role);
      if (row < all.size()) {
        distances.put(edge.name(), all.get(row));
      }
    }
    return distances;
  }

  private static List<Length> distances(Profile profile, LineRole role) {
    return switch (role) {
      case CUT -> List.of();
      case JOIN -> profile.join().stream().toList();
      case FOLD -> profile.folds();
      case TOPSTITCH -> profile.topstitch();
    };
  }

  private void addRow(LineRole role, Map<String, Length> distances) {
    boolean joins = role == LineRole.JOIN;
    OffsetResult moved;
    try {
      moved = needsOffset(joins, distances) ? moved(distances, joins) : cut;
    } catch (DraftingException e) {
      withoutRoom.addAll(distances.keySet());
      return;
    }
    for (Map.Entry<String, Length> entry : distances.entrySet()) {
      addLine(role, piece.edge(entry.getKey()), entry.getValue(), moved);
    }
  }

  /** All edges at the distances of this row: joins among cut edges, other lines among finished. */
  private OffsetResult moved(Map<String, Length> distances, boolean joins) {
    if (joins) {
      return outlines.with(distances, true);
    }
    Map<String, Length> all = new LinkedHashMap<>();
    piece.edges().forEach(e -> all.put(e.name(), Length.ZERO));
    all.putAll(distances);
    return outlines.with(all, false);
  }

  private boolean needsOffset(boolean joins, Map<String, Length> distances) {
    return distances.values().stream().anyMatch(d -> !d.isZero())
        || (joins && piece.corners().stream().anyMatch(outlines::isFoldedBack));
  }

  private void addLine(LineRole role, Edge edge, Length distance, OffsetResult moved) {
    if (edge.isOnFold()) {
      cut.parts(edge.name()).forEach(p -> add(role, edge, p.curve()));
    } else if (distance.compareTo(CutOutline.cutDistance(edge)) < 0) {
      List<Curve> runs = runs(role, edge, distance, moved);
      if (runs.isEmpty()) {
        withoutRoom.add(edge.name());
      }
      for (int i = 0; i < runs.size(); i++) {
        boolean onBefore = i == 0 && goesOn(corner -> corner.after().equals(edge.name()));
        boolean onAfter =
            i == runs.size() - 1 && goesOn(corner -> corner.before().equals(edge.name()));
        within.clip(runs.get(i), onBefore, onAfter).ifPresent(line -> add(role, edge, line));
      }
    }
  }

  /** Whether the outline goes on at such a corner with hardly a turn. */
  private boolean goesOn(Predicate<Corner> which) {
    return piece.corners().stream()
        .filter(which)
        .anyMatch(corner -> Math.abs(corner.interiorAngle().toDegrees() - 180) < STRAIGHT_ON);
  }

  private void add(LineRole role, Edge edge, Curve curve) {
    lines.add(new DerivedLine(role, edge, curve));
  }

  private List<Curve> runs(LineRole role, Edge edge, Length distance, OffsetResult moved) {
    boolean follows = role == LineRole.JOIN && !moved.equals(cut);
    if (distance.isZero() && !follows) {
      return List.of(edge.curve());
    }
    List<OffsetPart> parts = moved.parts();
    List<Curve> runs = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      OffsetPart part = parts.get(i);
      if (part.tag() == OffsetTag.EDGE && part.sourceName().equals(edge.name())) {
        runs.add(follows ? alongTurnedHems(parts, i) : part.curve());
      }
    }
    return runs;
  }

  /** A parallel and, where a turned hem follows or precedes it, its mirrored continuation. */
  private Curve alongTurnedHems(List<OffsetPart> parts, int at) {
    Curve curve = parts.get(at).curve();
    int count = parts.size();
    String edge = parts.get(at).sourceName();
    for (Corner corner : piece.corners()) {
      if (!outlines.isFoldedBack(corner)) {
        continue;
      }
      if (corner.before().equals(edge)) {
        for (int i = at + 1; isJoin(parts.get(i % count), corner); i++) {
          curve = curve.then(parts.get(i % count).curve());
        }
      } else if (corner.after().equals(edge)) {
        for (int i = at + count - 1; isJoin(parts.get(i % count), corner); i--) {
          curve = parts.get(i % count).curve().then(curve);
        }
      }
    }
    return curve;
  }

  private static boolean isJoin(OffsetPart part, Corner corner) {
    return part.tag() != OffsetTag.EDGE && part.sourceName().equals(corner.before());
  }
}
