package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerTreatment;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What may be said of a piece besides its outline; a corner goes by the edge that arrives at it.
 */
@SuppressWarnings("serial") // always unmodifiable collections of the JDK
record PieceDetails(
    Cutting cutting,
    String cloth,
    Angle grain,
    List<Notch> notches,
    List<MarkingLine> markings,
    SortedSet<String> pointed,
    SortedMap<String, CornerTreatment> treatments)
    implements Serializable {
  PieceDetails {
    Objects.requireNonNull(cutting, "cutting");
    Objects.requireNonNull(cloth, "cloth");
    Objects.requireNonNull(grain, "grain");
    notches = List.copyOf(notches);
    markings = List.copyOf(markings);
    pointed = Collections.unmodifiableSortedSet(new TreeSet<>(pointed));
    treatments = Collections.unmodifiableSortedMap(new TreeMap<>(treatments));
  }

  static PieceDetails usual(boolean onFold) {
    return new PieceDetails(
        onFold ? Cutting.onFold(1) : Cutting.single(1),
        "body",
        Angle.degrees(90),
        List.of(),
        List.of(),
        Collections.emptySortedSet(),
        Collections.emptySortedMap());
  }

  /** Refuses what does not suit these edges. */
  void check(List<Edge> edges) {
    boolean onFold = edges.stream().anyMatch(Edge::isOnFold);
    if (onFold != (cutting.kind() == Cutting.Kind.ON_FOLD)) {
      throw DraftingException.of(
              onFold
                  ? "a half on the fold is cut on the fold"
                  : "the piece has no edge on the fold")
          .value(cutting)
          .accepted(onFold ? "cut 1 on the fold" : "cut 1, or cut 1 pair");
    }
    notches.forEach(notch -> checkNotch(notch, edges));
  }

  private static void checkNotch(Notch notch, List<Edge> edges) {
    Edge edge =
        edges.stream()
            .filter(e -> e.name().equals(notch.edge()))
            .findFirst()
            .orElseThrow(() -> PieceCheck.unknownEdge(notch.edge(), edges).at("notch"));
    Length end = edge.length();
    if (notch.along().compareTo(end) > 0) {
      throw DraftingException.of("a notch lies beyond the end of its edge")
          .at(edge.name())
          .value(notch.along())
          .accepted("a length from 0 mm to " + end);
    }
  }

  PieceDetails withCutting(Cutting newCutting) {
    return new PieceDetails(newCutting, cloth, grain, notches, markings, pointed, treatments);
  }

  PieceDetails withCloth(String newCloth) {
    return new PieceDetails(cutting, newCloth, grain, notches, markings, pointed, treatments);
  }

  PieceDetails withGrain(Angle newGrain) {
    return new PieceDetails(cutting, cloth, newGrain, notches, markings, pointed, treatments);
  }

  PieceDetails withNotch(Notch notch) {
    return withNotches(added(notches, notch));
  }

  PieceDetails withNotches(List<Notch> newNotches) {
    return new PieceDetails(
        cutting, cloth, grain, List.copyOf(newNotches), markings, pointed, treatments);
  }

  PieceDetails withMarking(MarkingLine marking) {
    return withMarkings(added(markings, marking));
  }

  PieceDetails withMarkings(List<MarkingLine> newMarkings) {
    return new PieceDetails(
        cutting, cloth, grain, notches, List.copyOf(newMarkings), pointed, treatments);
  }

  PieceDetails withPointed(String before) {
    SortedSet<String> more = new TreeSet<>(pointed);
    more.add(before);
    return withPointed(more);
  }

  PieceDetails withPointed(SortedSet<String> newPointed) {
    return new PieceDetails(
        cutting,
        cloth,
        grain,
        notches,
        markings,
        Collections.unmodifiableSortedSet(newPointed),
        treatments);
  }

  PieceDetails withTreatment(String before, CornerTreatment treatment) {
    SortedMap<String, CornerTreatment> more = new TreeMap<>(treatments);
    more.put(before, Objects.requireNonNull(treatment, "treatment"));
    return withTreatments(more);
  }

  PieceDetails withTreatments(SortedMap<String, CornerTreatment> newTreatments) {
    return new PieceDetails(
        cutting,
        cloth,
        grain,
        notches,
        markings,
        pointed,
        Collections.unmodifiableSortedMap(newTreatments));
  }

  private static <T> List<T> added(List<T> list, T last) {
    List<T> more = new ArrayList<>(list);
    more.add(last);
    return List.copyOf(more);
  }
}
