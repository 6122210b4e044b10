package dev.drafting.core.geometry;

import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where curves meet: pairs of segments whose boxes come together, each place named once. */
final class CurveCrossings {
  /** Places on one curve that are no further apart than this, in millimetres, are neighbours. */
  private static final double NEXT_TO = 1e-5;

  private static final double SAME = 1e-7;
  private static final double SAME_PLACE = 1e-6;
  private static final double SAME_WHERE_TOUCHING = 1e-3;

  private final Curve curve;
  private final Curve other;
  private final List<Place> places = new ArrayList<>();

  private final boolean within;

  private CurveCrossings(Curve curve, Curve other, boolean within) {
    this.curve = curve;
    this.other = other;
    this.within = within;
  }

  /**
   * A meeting: how far apart its two points are, its lengths along both curves, and how far apart
   * equal ones may seem. Just before a closed curve closes the length is negative.
   */
  private record Place(Point point, double gap, double along, double alongOther, double blur) {}

  static List<Crossing> between(Curve curve, Curve other) {
    CurveCrossings crossings = new CurveCrossings(curve, other, false);
    curve.tree().pairs(other.tree(), SegmentCrossings.MEET, crossings::meet);
    return crossings.inOrder();
  }

  static List<Crossing> within(Curve curve) {
    CurveCrossings crossings = new CurveCrossings(curve, curve, true);
    curve.tree().pairsWithin(SegmentCrossings.MEET, crossings::meetInside);
    for (int i = 0; i < curve.segments().size(); i++) {
      if (curve.segments().get(i) instanceof Cubic cubic) {
        crossings.addApart(i, i, SegmentCrossings.within(cubic));
      }
    }
    return crossings.inOrder();
  }

  private void meet(int segment, int there) {
    Segment first = curve.segments().get(segment);
    Segment second = other.segments().get(there);
    for (SegmentCrossings.Meeting meeting : SegmentCrossings.of(first, second)) {
      places.add(place(segment, there, meeting));
    }
  }

  private void meetInside(int earlier, int later) {
    Segment first = curve.segments().get(earlier);
    Segment second = curve.segments().get(later);
    if (later == earlier + 1 && new Span(first, 0, 1).advancesWith(new Span(second, 0, 1))) {
      return;
    }
    addApart(earlier, later, SegmentCrossings.of(first, second));
  }

  private void addApart(int earlier, int later, List<SegmentCrossings.Meeting> meetings) {
    for (SegmentCrossings.Meeting meeting : meetings) {
      Place place = place(earlier, later, meeting);
      double way = Math.abs(place.alongOther - place.along);
      double nextTo = Math.max(NEXT_TO, place.blur);
      if (way > nextTo && !(curve.isClosed() && curve.total() - way <= nextTo)) {
        places.add(place.along <= place.alongOther ? place : swapped(place));
      }
    }
  }

  private static Place swapped(Place place) {
    return new Place(place.point, place.gap, place.alongOther, place.along, place.blur);
  }

  private Place place(int segment, int there, SegmentCrossings.Meeting meeting) {
    Segment first = curve.segments().get(segment);
    Segment second = other.segments().get(there);
    Vector direction = first.directionAt(meeting.s());
    double sine = Math.abs(direction.cross(second.directionAt(meeting.t())));
    double blur = Math.min(SAME_WHERE_TOUCHING, SAME / Math.max(sine, 1e-9));
    Point point = first.pointAt(meeting.s());
    return new Place(
        point,
        point.gap(second.pointAt(meeting.t())),
        fromStart(curve, curve.alongAt(segment, meeting.s())),
        fromStart(other, other.alongAt(there, meeting.t())),
        blur);
  }

  private static double fromStart(Curve curve, double along) {
    boolean closing = curve.isClosed() && curve.total() - along <= SAME_WHERE_TOUCHING;
    return closing ? along - curve.total() : along;
  }

  private static Length onCurve(Curve curve, double fromStart) {
    if (fromStart >= 0) {
      return Length.mm(fromStart);
    }
    return fromStart >= -SAME_PLACE ? Length.ZERO : Length.mm(fromStart + curve.total());
  }

  private List<Crossing> inOrder() {
    places.sort(Comparator.comparingDouble(Place::along).thenComparingDouble(Place::alongOther));
    List<Cluster> clusters = new ArrayList<>();
    for (Place place : places) {
      int known = indexOf(clusters, place);
      clusters.add(known < 0 ? new Cluster(place, place) : clusters.remove(known).with(place));
    }
    return clusters.stream()
        .map(cluster -> crossing(cluster.closest))
        .sorted(Comparator.comparing(Crossing::along).thenComparing(Crossing::alongOther))
        .toList();
  }

  /** One meeting that was found several times, or a stretch along which two curves touch. */
  private record Cluster(Place closest, Place last) {
    Cluster with(Place place) {
      return new Cluster(place.gap < closest.gap ? place : closest, place);
    }

    boolean reaches(Place place) {
      double blur = Math.min(place.blur, last.blur);
      return place.along - last.along <= blur
          && Math.abs(place.alongOther - last.alongOther) <= blur;
    }
  }

  /** The cluster that a place belongs to; clusters stand in the order of their last places. */
  private static int indexOf(List<Cluster> clusters, Place place) {
    for (int i = clusters.size() - 1; i >= 0; i--) {
      if (clusters.get(i).reaches(place)) {
        return i;
      }
      if (place.along - clusters.get(i).last.along > SAME_WHERE_TOUCHING) {
        return -1;
      }
    }
    return -1;
  }

  private Crossing crossing(Place place) {
    Length along = onCurve(curve, place.along);
    Length alongOther = onCurve(other, place.alongOther);
    boolean inOrder = !within || along.compareTo(alongOther) <= 0;
    return new Crossing(place.point, inOrder ? along : alongOther, inOrder ? alongOther : along);
  }
}
