package dev.drafting.knit.fabric;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Makes a pattern wider at its side seams: each side edge of the body moves square to the grain by
 * its part of the change, and the underarm edges of the sleeves move as far and give way until
 * their caps fit again.
 */
final class SideChange {
  private final Pattern pattern;
  private final Original garment;

  SideChange(Pattern pattern, Original garment) {
    this.pattern = pattern;
    this.garment = garment;
  }

  Pattern by(Length difference, Length girth) {
    if (garment.includesShoulders()) {
      return inProportion(1 + difference.ratioTo(girth));
    }
    List<EdgeRef> edges = seams().stream().flatMap(SideChange::edges).distinct().toList();
    double copies = edges.stream().filter(edge -> !isSleeve(edge)).mapToInt(this::copies).sum();
    if (copies == 0) {
      throw DraftingException.of("no seam takes the change of the girth")
          .at(pattern.name())
          .value(String.join(", ", pattern.seams().stream().map(Seam::name).toList()))
          .accepted("a seam called side or underarm, or the names of the seams that take it");
    }
    double each = difference.toMm() / copies;
    Map<EdgeRef, Vector> moves = new LinkedHashMap<>();
    Reshaping reshaping = Reshaping.of(pattern);
    for (EdgeRef edge : edges) {
      Vector move = outward(edge).times(each);
      for (EdgeRef corner : List.of(before(edge), edge)) {
        moves.put(corner, move);
        reshaping = isSleeve(edge) ? reshaping.yielding(corner) : reshaping;
      }
    }
    for (Map.Entry<EdgeRef, Vector> move : moves.entrySet()) {
      reshaping = reshaping.moved(move.getKey(), move.getValue());
    }
    return reshaping.result();
  }

  private Pattern inProportion(double factor) {
    Reshaping reshaping = Reshaping.of(pattern);
    for (Piece piece : pattern.pieces()) {
      reshaping = reshaping.scaled(piece.name(), factor, 1);
    }
    return reshaping.result();
  }

  private List<Seam> seams() {
    if (garment.seams().isEmpty()) {
      return pattern.seams().stream().filter(SideChange::isAtTheSide).toList();
    }
    List<Seam> seams = new ArrayList<>();
    for (String name : garment.seams()) {
      seams.add(
          pattern.seams().stream()
              .filter(seam -> seam.name().equals(name))
              .findFirst()
              .orElseThrow(() -> unknown(name)));
    }
    return seams;
  }

  private DraftingException unknown(String seam) {
    return DraftingException.of("there is no such seam")
        .at(pattern.name())
        .value(seam)
        .accepted(String.join(", ", pattern.seams().stream().map(Seam::name).toList()));
  }

  private static boolean isAtTheSide(Seam seam) {
    String name = seam.name().toLowerCase(Locale.ROOT);
    return name.contains("side") || name.contains("underarm");
  }

  private static Stream<EdgeRef> edges(Seam seam) {
    return Stream.concat(seam.first().stream(), seam.second().stream());
  }

  /** A piece that is sewn to an armhole is a sleeve. */
  private boolean isSleeve(EdgeRef edge) {
    return pattern.seams().stream()
        .filter(seam -> !isAtTheSide(seam))
        .anyMatch(
            seam ->
                joins(seam.first(), seam.second(), edge)
                    || joins(seam.second(), seam.first(), edge));
  }

  private static boolean joins(List<EdgeRef> ofSleeve, List<EdgeRef> ofBody, EdgeRef edge) {
    return ofSleeve.stream().anyMatch(e -> e.piece().equals(edge.piece()))
        && ofBody.stream().anyMatch(e -> e.edge().contains("armhole"));
  }

  /** How many of an edge there are in the garment. */
  private int copies(EdgeRef edge) {
    Cutting cutting = pattern.piece(edge.piece()).cutting();
    int halves = cutting.kind() == Cutting.Kind.ON_FOLD ? 2 : 1;
    return halves * cutting.pieces();
  }

  private EdgeRef before(EdgeRef edge) {
    List<Edge> edges = pattern.piece(edge.piece()).edges();
    String before = edges.get(edges.size() - 1).name();
    for (Edge next : edges) {
      if (next.name().equals(edge.edge())) {
        break;
      }
      before = next.name();
    }
    return new EdgeRef(edge.piece(), before);
  }

  /** Square to the grain, away from the cloth. */
  private Vector outward(EdgeRef edge) {
    Piece piece = pattern.piece(edge.piece());
    Edge line = piece.edge(edge.edge());
    Vector across = Vector.at(piece.grain()).left().negated();
    Vector right = line.curve().end().minus(line.curve().start()).left().negated();
    return right.dot(across) >= 0 ? across : across.negated();
  }
}
