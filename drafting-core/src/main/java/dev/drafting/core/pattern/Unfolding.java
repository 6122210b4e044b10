package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.offset.CornerTreatment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Mirrors pieces and opens out halves. */
final class Unfolding {
  private Unfolding() {}

  private static Curve image(Curve curve) {
    return curve.mirrored().reversed();
  }

  private static MarkingLine image(MarkingLine marking) {
    return MarkingLine.of(marking.label(), marking.curve().mirrored());
  }

  static Piece mirror(Piece piece) {
    List<Edge> edges = new ArrayList<>();
    List<Notch> notches = new ArrayList<>();
    SortedSet<String> pointed = new TreeSet<>();
    SortedMap<String, CornerTreatment> treatments = new TreeMap<>();
    for (Edge edge : piece.edges()) {
      edges.add(0, edge.redrawn(edge.name(), image(edge.curve())));
    }
    for (Notch notch : piece.notches()) {
      Edge edge = piece.edge(notch.edge());
      notches.add(Notch.of(notch.edge(), edge.length().minus(notch.along()), notch.label()));
    }
    for (Corner corner : piece.corners()) {
      if (corner.isPointed()) {
        pointed.add(corner.after());
      }
      corner.treatment().ifPresent(t -> treatments.put(corner.after(), t.reversed()));
    }
    PieceDetails details =
        piece
            .details()
            .withNotches(notches)
            .withMarkings(piece.markings().stream().map(Unfolding::image).toList())
            .withPointed(pointed)
            .withTreatments(treatments)
            .withGrain(Angle.degrees(180).minus(piece.grain()));
    return Piece.of(piece.name(), edges, details);
  }

  static Piece unfold(Piece piece) {
    return new Halves(piece).whole();
  }

  /** One half on the fold, its edges from the foot of the fold round to its top. */
  private static final class Halves {
    private final Piece piece;
    private final List<Edge> drawn;

    Halves(Piece piece) {
      this.piece = piece;
      List<Edge> edges = new ArrayList<>(piece.edges());
      while (!edges.get(0).isOnFold()) {
        Collections.rotate(edges, -1);
      }
      this.drawn = List.copyOf(edges.subList(1, edges.size()));
    }

    Piece whole() {
      List<MarkingLine> markings = new ArrayList<>(piece.markings());
      piece.markings().forEach(m -> markings.add(image(m)));
      PieceDetails details =
          piece
              .details()
              .withCutting(Cutting.single(piece.cutting().times()))
              .withNotches(notches())
              .withMarkings(markings)
              .withPointed(pointed())
              .withTreatments(treatments());
      return Piece.of(piece.name(), edges(), details);
    }

    private boolean isFirst(int i) {
      return i == 0;
    }

    private boolean isLast(int i) {
      return i == drawn.size() - 1;
    }

    private boolean meetsFold(int i) {
      return isFirst(i) || isLast(i);
    }

    private String right(int i) {
      return meetsFold(i) ? drawn.get(i).name() : drawn.get(i).name() + " (right)";
    }

    private String left(int i) {
      return meetsFold(i) ? drawn.get(i).name() : drawn.get(i).name() + " (left)";
    }

    private List<Edge> edges() {
      List<Edge> edges = new ArrayList<>();
      for (int i = 0; i < drawn.size(); i++) {
        Edge edge = drawn.get(i);
        Curve curve = edge.curve();
        if (isLast(i)) {
          curve = curve.then(image(curve));
        } else if (isFirst(i)) {
          curve = image(curve).then(curve);
        }
        edges.add(edge.redrawn(right(i), curve));
      }
      for (int i = drawn.size() - 2; i > 0; i--) {
        edges.add(drawn.get(i).redrawn(left(i), image(drawn.get(i).curve())));
      }
      return edges;
    }

    private List<Notch> notches() {
      List<Notch> notches = new ArrayList<>();
      for (Notch notch : piece.notches()) {
        for (int i = 0; i < drawn.size(); i++) {
          if (drawn.get(i).name().equals(notch.edge())) {
            notches.addAll(both(notch, i));
          }
        }
      }
      return notches;
    }

    private List<Notch> both(Notch notch, int i) {
      var length = drawn.get(i).length();
      var fromEnd = length.minus(notch.along());
      String label = notch.label();
      if (isLast(i)) {
        return List.of(
            Notch.of(right(i), notch.along(), label),
            Notch.of(right(i), length.plus(fromEnd), label));
      }
      if (isFirst(i)) {
        return List.of(
            Notch.of(right(i), length.plus(notch.along()), label),
            Notch.of(right(i), fromEnd, label));
      }
      return List.of(Notch.of(right(i), notch.along(), label), Notch.of(left(i), fromEnd, label));
    }

    private Corner corner(int before) {
      return piece.corner(drawn.get(before).name(), drawn.get(before + 1).name());
    }

    private SortedMap<String, CornerTreatment> treatments() {
      SortedMap<String, CornerTreatment> treatments = new TreeMap<>();
      for (int i = 0; i + 1 < drawn.size(); i++) {
        Optional<CornerTreatment> treatment = corner(i).treatment();
        if (treatment.isPresent()) {
          treatments.put(right(i), treatment.get());
          treatments.put(left(i + 1), treatment.get().reversed());
        }
      }
      return treatments;
    }

    private SortedSet<String> pointed() {
      SortedSet<String> pointed = new TreeSet<>();
      for (int i = 0; i + 1 < drawn.size(); i++) {
        if (corner(i).isPointed()) {
          pointed.add(right(i));
          pointed.add(left(i + 1));
        }
      }
      return pointed;
    }
  }
}
