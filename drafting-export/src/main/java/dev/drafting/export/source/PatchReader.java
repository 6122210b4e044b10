package dev.drafting.export.source;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads which pieces are laid on others, where, and how much of their edges is turned in. */
final class PatchReader {
  private static final int MOST_PATCHES = 20;
  private static final int MOST_EDGES = 200;
  private static final Length MOST_ALLOWANCE = Length.mm(50);
  private static final Length FARTHEST = Length.cm(500);

  private final EdgeNames edges;
  private final List<Laid> patches = new ArrayList<>();
  private final Map<EdgeRef, Finish> finishes = new LinkedHashMap<>();

  /** A patch as it is written: its place is measured on the drawn pieces. */
  private record Laid(
      Entry entry, String piece, String base, Set<String> open, Length across, Length up) {

    Pattern on(Pattern pattern) {
      return entry.placed(
          () -> {
            Patch patch = Patch.of(piece, base, place(pattern.piece(piece), pattern.piece(base)));
            for (String edge : open) {
              patch = patch.openAt(edge);
            }
            return pattern.withPatch(patch);
          });
    }

    /** From the fold or the left end of the piece beneath, and from its lowest point. */
    private Point place(Piece laid, Piece beneath) {
      Box own = laid.outline().bounds();
      Box under = beneath.outline().bounds();
      double left = beneath.isOnFold() ? 0 : under.minX();
      double x = laid.isOnFold() ? across.toMm() : left + across.toMm() - own.minX();
      return new Point(x, under.minY() + up.toMm() - own.minY());
    }
  }

  private PatchReader(EdgeNames edges) {
    this.edges = edges;
  }

  static PatchReader read(Fields whole, EdgeNames edges) {
    PatchReader reader = new PatchReader(edges);
    whole.find("patches").ifPresent(list -> list.list(0, MOST_PATCHES).forEach(reader::add));
    return reader;
  }

  private void add(Entry entry) {
    Fields fields = entry.fields("piece", "on", "across", "up", "open", "allowance");
    String piece = fields.get("piece").name();
    String base = fields.get("on").name();
    Set<String> open = new LinkedHashSet<>();
    fields
        .find("open")
        .ifPresent(list -> list.list(0, MOST_EDGES).forEach(edge -> open.add(edge.name())));
    Length across = fields.or("across", Length.ZERO, e -> e.length(FARTHEST.negated(), FARTHEST));
    Length up = fields.get("up").length(FARTHEST.negated(), FARTHEST);
    Length allowance = fields.get("allowance").length(Length.ZERO, MOST_ALLOWANCE);
    for (EdgeRef edge : edges.all()) {
      if (edge.piece().equals(piece) && !open.contains(edge.edge())) {
        finishes.put(edge, SeamFinish.of(allowance));
      }
    }
    patches.add(new Laid(entry, piece, base, open, across, up));
  }

  /** The allowance of every edge that is stitched down. */
  Map<EdgeRef, Finish> finishes() {
    return finishes;
  }

  Pattern on(Pattern pattern) {
    Pattern laid = pattern;
    for (Laid patch : patches) {
      laid = patch.on(laid);
    }
    return laid;
  }
}
