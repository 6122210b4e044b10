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
  private static final double SAME_WHERE_TOUCHING = 1e-3;

  private final Curve curve;
  private final Curve other;
  private final List<Place> places = new ArrayList<>();

  private CurveCrossings(Curve curve, Curve other) {
    this.curve = curve;
    this.other = other;
  }

  /** A meeting with its lengths along both curves and how far apart equal ones may seem. */
  private record Place(Point point, double along, double alongOther, double blur) {}

  static List<Crossing> between(Curve curve, Curve other) {
    CurveCrossings crossings = new CurveCrossings(curve, other);
    curve.tree().pairs(other.tree(), SegmentCrossings.MEET, crossings::meet);
    return crossings.inOrder();
  }

  static List<Crossing> within(Curve curve) {
    CurveCrossings crossings = new CurveCrossings(curve, curve);
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
      if (way > NEXT_TO && !(curve.isClosed() && curve.total() - way <= NEXT_TO)) {
        places.add(place.along <= place.alongOther ? place : swapped(place));
      }
    }
  }

  private static Place swapped(Place place) {
    return new Place(place.point, place.alongOther, place.along, place.blur);
  }

  private Place place(int segment, int there, SegmentCrossings.Meeting meeting) {
    Segment first = curve.segments().get(segment);
    Segment second = other.segments().get(there);
    Vector direction = first.directionAt(meeting.s());
    double sine = Math.abs(direction.cross(second.directionAt(meeting.t())));
    double blur = Math.min(SAME_WHERE_TOUCHING, SAME / Math.max(sine, 1e-9));
    return new Place(
        first.pointAt(meeting.s()),
        along(curve, segment, meeting.s()),
        along(other, there, meeting.t()),
        blur);
  }

  /** The closing point of a closed curve is at its start, not at its end. */
  private static double along(Curve curve, int segment, double t) {
    double along = curve.alongAt(segment, t);
    return curve.isClosed() && curve.total() - along <= SAME ? 0 : along;
  }

  private List<Crossing> inOrder() {
    places.sort(Comparator.comparingDouble(Place::along).thenComparingDouble(Place::alongOther));
    List<Place> kept = new ArrayList<>();
    for (Place place : places) {
      if (!isKnown(kept, place)) {
        kept.add(place);
      }
    }
    return kept.stream()
        .map(p -> new Crossing(p.point, Length.mm(p.along), Length.mm(p.alongOther)))
        .toList();
  }

  private static boolean isKnown(List<Place> kept, Place place) {
    for (int i = kept.size() - 1; i >= 0; i--) {
      Place before = kept.get(i);
      double apart = place.along - before.along;
      double blur = Math.min(place.blur, before.blur);
      if (apart > SAME_WHERE_TOUCHING) {
        return false;
      }
      if (apart <= blur && Math.abs(place.alongOther - before.alongOther) <= blur) {
        return true;
      }
    }
    return false;
  }
}
