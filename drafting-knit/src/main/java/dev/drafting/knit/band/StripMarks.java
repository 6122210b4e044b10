package dev.drafting.knit.band;

import dev.drafting.core.assembly.OpeningStation;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a strip is marked: at the quarters of its edge, and where it meets seams and centres. Round
 * the loop everything is measured along the seam from the strip's join.
 */
final class StripMarks {
  private static final List<String> QUARTERS = List.of("join", "quarter", "half", "three quarters");

  /** Two marks closer than this share of the loop are one: half a millimetre in half a metre. */
  private static final double ONE_MARK = 0.001;

  /** From this turn on a corner is mitred (common practice, no source). */
  private static final double MITRED_DEGREES = 30;

  private static final String MITRED = ", mitred";

  private final Strip strip;
  private final MarkSpacing spacing;
  private final SeamLine line;
  private final List<Meeting> meetings = new ArrayList<>();
  private final double start;

  /** A station of the opening and how far round it lies along the seam, in mm. */
  private record Meeting(double at, String label) {
    boolean isAt(String place) {
      return label.equals(place) || label.equals(place + MITRED);
    }
  }

  StripMarks(Strip strip, MarkSpacing spacing) {
    this.strip = strip;
    this.spacing = spacing;
    this.line = new SeamLine(strip.opening(), strip.finish().joinDistance());
    List<OpeningStation> stations = strip.opening().stations();
    for (int i = 0; i < stations.size(); i++) {
      meetings.add(new Meeting(line.stations().get(i), label(stations.get(i))));
    }
    this.start = join().at();
  }

  private static String label(OpeningStation station) {
    boolean mitred = Math.abs(station.angle().toDegrees() - 180) > MITRED_DEGREES;
    return mitred ? station.label() + MITRED : station.label();
  }

  SeamLine line() {
    return line;
  }

  /** Where the join lies along the seam line, in mm from the start of the loop. */
  double start() {
    return start;
  }

  List<StripMark> marks() {
    double whole = line.length();
    List<Meeting> turned =
        meetings.stream()
            .map(m -> new Meeting(fromJoin(m.at() - start), m.label()))
            .sorted(Comparator.comparingDouble(Meeting::at))
            .toList();
    List<StripMark> marks = new ArrayList<>();
    for (int quarter = 0; quarter < 4; quarter++) {
      double at = whole * quarter / 4;
      marks.add(mark(at, quarterLabel(QUARTERS.get(quarter), at, turned)));
    }
    turned.stream()
        .filter(meeting -> !isQuarter(meeting.at() / whole))
        .forEach(meeting -> marks.add(mark(meeting.at(), meeting.label())));
    marks.sort(Comparator.comparing(StripMark::along));
    return List.copyOf(marks);
  }

  List<StripSection> sections() {
    List<StripMark> marks = marks();
    List<StripSection> sections = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      StripMark from = marks.get(i);
      boolean last = i + 1 == marks.size();
      StripMark to = marks.get(last ? 0 : i + 1);
      Length edgeEnd = last ? Length.mm(line.length()) : to.onEdge();
      Length stripEnd = last ? strip.loop() : to.along();
      sections.add(
          new StripSection(
              from.label(),
              to.label(),
              edgeEnd.minus(from.onEdge()),
              stripEnd.minus(from.along())));
    }
    return List.copyOf(sections);
  }

  /** Where the maker says; otherwise at the centre back or under the arm, where it shows least. */
  private Meeting join() {
    return meetings.stream()
        .filter(meeting -> strip.rule().joinAt().map(meeting::isAt).orElse(true))
        .min(
            Comparator.comparingInt((Meeting meeting) -> preference(meeting.label()))
                .thenComparing(Meeting::label)
                .thenComparing(Meeting::at))
        .orElseThrow();
  }

  private static int preference(String label) {
    if (label.contains("centre back")) {
      return 0;
    }
    return label.contains("side") || label.contains("underarm") ? 1 : 2;
  }

  private double fromJoin(double distance) {
    double positive = distance < 0 ? distance + line.length() : distance;
    return positive > (1 - ONE_MARK) * line.length() ? 0 : positive;
  }

  private static boolean isQuarter(double round) {
    return Math.abs(round * 4 - Math.rint(round * 4)) < 4 * ONE_MARK;
  }

  private String quarterLabel(String name, double at, List<Meeting> turned) {
    String quarter = at == 0 && strip.rule().lapsAtJoin() ? "middle of the lap" : name;
    return turned.stream()
        .filter(meeting -> Math.abs(meeting.at() - at) < ONE_MARK * line.length())
        .findFirst()
        .map(meeting -> quarter + ": " + meeting.label())
        .orElse(quarter);
  }

  private StripMark mark(double fromJoin, String label) {
    double share = spacing == MarkSpacing.EVEN ? fromJoin / line.length() : shareByCurves(fromJoin);
    return new StripMark(strip.loop().times(share), Length.mm(fromJoin), label);
  }

  /**
   * Every part takes its seam less lambda times what the finished edge is shorter there: L - lambda
   * w K, lambda from a half to one as the whole loop asks. What is left over is spread evenly.
   */
  private double shareByCurves(double fromJoin) {
    double shorter = line.length() - line.edgeLength();
    double lambda =
        Math.abs(shorter) < 1e-6
            ? 0
            : Math.min(1, Math.max(0.5, (line.length() - strip.loop().toMm()) / shorter));
    double part = fromJoin - edgeFromJoin(fromJoin);
    return (fromJoin - lambda * part) / (line.length() - lambda * shorter);
  }

  private double edgeFromJoin(double fromJoin) {
    double at = start + fromJoin;
    boolean round = at > line.length();
    double edge = line.edgeAt(round ? at - line.length() : at) - line.edgeAt(start);
    return round ? edge + line.edgeLength() : edge;
  }
}
