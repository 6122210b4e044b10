package dev.drafting.knit.band;

import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.assembly.OpeningStation;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where a strip is marked: at its quarters, and where it meets the seams and centres. */
final class StripMarks {
  private static final List<String> QUARTERS = List.of("join", "quarter", "half", "three quarters");

  /** Two marks closer than this share of the loop are one: half a millimetre in half a metre. */
  private static final double ONE_MARK = 0.001;

  private final Strip strip;
  private final List<Meeting> meetings = new ArrayList<>();

  /** A station of the opening and how far round it lies along the seam, from 0 to under 1. */
  private record Meeting(double round, String label) {}

  private StripMarks(Strip strip) {
    this.strip = strip;
    List<OpeningStation> stations = strip.opening().stations();
    List<OpeningPart> parts = strip.opening().parts();
    double whole = parts.stream().mapToDouble(this::seamLength).sum();
    double along = 0;
    for (int i = 0; i < parts.size(); i++) {
      meetings.add(new Meeting(along / whole, stations.get(i).label()));
      along += seamLength(parts.get(i));
    }
  }

  static List<StripMark> of(Strip strip) {
    return new StripMarks(strip).marks();
  }

  /** The length along the strip's seam: parallel curves differ by width times turning. */
  private double seamLength(OpeningPart part) {
    double inward = strip.finish().showing().toMm();
    return part.curve().length().toMm() - inward * part.curve().turning().toRadians();
  }

  private List<StripMark> marks() {
    double start = join().round();
    List<Meeting> turned =
        meetings.stream()
            .map(m -> new Meeting(fromJoin(m.round() - start), m.label()))
            .sorted(Comparator.comparingDouble(Meeting::round))
            .toList();
    List<StripMark> marks = new ArrayList<>();
    for (int quarter = 0; quarter < 4; quarter++) {
      double at = quarter / 4.0;
      marks.add(mark(at, quarterLabel(QUARTERS.get(quarter), at, turned)));
    }
    turned.stream()
        .filter(meeting -> !isQuarter(meeting.round()))
        .forEach(meeting -> marks.add(mark(meeting.round(), meeting.label())));
    marks.sort(Comparator.comparing(StripMark::along));
    return List.copyOf(marks);
  }

  /** Strips are joined at the centre back or under the arm, where it shows least. */
  private Meeting join() {
    return meetings.stream()
        .min(
            Comparator.comparingInt((Meeting meeting) -> preference(meeting.label()))
                .thenComparing(Meeting::label)
                .thenComparing(Meeting::round))
        .orElseThrow();
  }

  private static int preference(String label) {
    if (label.contains("centre back")) {
      return 0;
    }
    return label.contains("side") || label.contains("underarm") ? 1 : 2;
  }

  private static double fromJoin(double round) {
    double positive = round < 0 ? round + 1 : round;
    return positive > 1 - ONE_MARK ? 0 : positive;
  }

  private static boolean isQuarter(double round) {
    return Math.abs(round * 4 - Math.rint(round * 4)) < 4 * ONE_MARK;
  }

  private static String quarterLabel(String quarter, double at, List<Meeting> turned) {
    return turned.stream()
        .filter(meeting -> Math.abs(meeting.round() - at) < ONE_MARK)
        .findFirst()
        .map(meeting -> quarter + ": " + meeting.label())
        .orElse(quarter);
  }

  private StripMark mark(double round, String label) {
    return new StripMark(Length.mm(strip.loop().toMm() * round), label);
  }
}
