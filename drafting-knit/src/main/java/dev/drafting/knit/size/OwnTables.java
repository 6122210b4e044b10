package dev.drafting.knit.size;

import static dev.drafting.knit.size.BodyMeasure.ANKLE_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.ARM_LENGTH;
import static dev.drafting.knit.size.BodyMeasure.BODY_RISE;
import static dev.drafting.knit.size.BodyMeasure.BUST_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.CERVICAL_TO_WAIST;
import static dev.drafting.knit.size.BodyMeasure.CHEST_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.HEAD_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.HEIGHT;
import static dev.drafting.knit.size.BodyMeasure.HIP_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.INSIDE_LEG;
import static dev.drafting.knit.size.BodyMeasure.NECK_BASE_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.SCYE_DEPTH;
import static dev.drafting.knit.size.BodyMeasure.SHOULDER_LENGTH;
import static dev.drafting.knit.size.BodyMeasure.THIGH_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.UPPER_ARM_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.WAIST_GIRTH;
import static dev.drafting.knit.size.BodyMeasure.WRIST_GIRTH;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.GirthBounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The tables of the project's own. The steps follow common practice for one size of 4 cm: waist and
 * hip 4 cm, neck 1 cm, shoulder 3 to 5 mm, back and scye 5 mm.
 */
final class OwnTables {
  /** EN 13402-3, women, as a published package of size tables gives them: steps of 4, then 6. */
  private static final double[] BUST_CM = {
    74, 78, 82, 86, 90, 94, 98, 102, 107, 113, 119, 125, 131
  };

  private static final double[] CHEST_CM = {
    78, 82, 86, 90, 94, 98, 102, 106, 110, 114, 118, 124, 130
  };

  /** A measure at the middle size, and by how much it grows with a centimetre of the main one. */
  private record Slope(double middleCm, double each) {}

  private static final Map<BodyMeasure, Slope> WOMEN =
      Map.ofEntries(
          Map.entry(HEIGHT, new Slope(168, 0)),
          Map.entry(HEAD_GIRTH, new Slope(56, 0)),
          Map.entry(NECK_BASE_GIRTH, new Slope(38, 0.25)),
          Map.entry(WAIST_GIRTH, new Slope(76, 1)),
          Map.entry(HIP_GIRTH, new Slope(98, 1)),
          Map.entry(UPPER_ARM_GIRTH, new Slope(29, 0.3)),
          Map.entry(WRIST_GIRTH, new Slope(16, 0.05)),
          Map.entry(THIGH_GIRTH, new Slope(57, 0.5)),
          Map.entry(ANKLE_GIRTH, new Slope(23, 0.05)),
          Map.entry(SHOULDER_LENGTH, new Slope(12.2, 0.08)),
          Map.entry(ARM_LENGTH, new Slope(59, 0.05)),
          Map.entry(SCYE_DEPTH, new Slope(20.5, 0.125)),
          Map.entry(CERVICAL_TO_WAIST, new Slope(41, 0.125)),
          Map.entry(BODY_RISE, new Slope(27, 0.1)),
          Map.entry(INSIDE_LEG, new Slope(77, 0)));

  private static final Map<BodyMeasure, Slope> MEN =
      Map.ofEntries(
          Map.entry(HEIGHT, new Slope(178, 0)),
          Map.entry(HEAD_GIRTH, new Slope(57.5, 0)),
          Map.entry(NECK_BASE_GIRTH, new Slope(42, 0.25)),
          Map.entry(WAIST_GIRTH, new Slope(86, 1)),
          Map.entry(HIP_GIRTH, new Slope(101, 0.8)),
          Map.entry(UPPER_ARM_GIRTH, new Slope(31, 0.3)),
          Map.entry(WRIST_GIRTH, new Slope(17.5, 0.05)),
          Map.entry(THIGH_GIRTH, new Slope(58, 0.5)),
          Map.entry(ANKLE_GIRTH, new Slope(24.5, 0.05)),
          Map.entry(SHOULDER_LENGTH, new Slope(14.5, 0.08)),
          Map.entry(ARM_LENGTH, new Slope(64, 0.05)),
          Map.entry(SCYE_DEPTH, new Slope(23, 0.125)),
          Map.entry(CERVICAL_TO_WAIST, new Slope(45, 0.125)),
          Map.entry(BODY_RISE, new Slope(26, 0.1)),
          Map.entry(INSIDE_LEG, new Slope(82, 0)));

  private static final double LEAST_HEIGHT_CM = 56;
  private static final double HEIGHT_STEP_CM = 6;

  /** Chest, waist, hip, head, and the youngest age, from 56 cm every 6 cm. */
  private static final double[][] CHILDREN = {
    {42, 41, 42, 40, 0},
    {44, 43, 44, 42, 0},
    {46, 45, 46, 44, 0},
    {48, 46, 48, 46, 0},
    {50, 48, 50, 48, 0},
    {52, 49.5, 52, 49, 1},
    {53.5, 50.5, 54, 50, 1},
    {55, 52, 56, 51, 2},
    {57, 53, 58.5, 52, 3},
    {59, 54.5, 61, 52.5, 4},
    {61, 56, 63.5, 53, 5},
    {63, 57.5, 66, 53.5, 6},
    {65, 59, 68.5, 54, 7},
    {68, 61, 71.5, 54.5, 8},
    {71, 63, 75, 55, 9},
    {74, 65, 78.5, 55.5, 10},
    {77, 67, 82, 55.5, 11},
    {80, 69, 85.5, 56, 12}
  };

  private OwnTables() {}

  static BodySizes women() {
    return new BodySizes(BUST_GIRTH, adults(BUST_GIRTH, BUST_CM, 92, WOMEN));
  }

  static BodySizes men() {
    return new BodySizes(CHEST_GIRTH, adults(CHEST_GIRTH, CHEST_CM, 100, MEN));
  }

  /** A size is drawn for the middle of its interval, and called by it in whole centimetres. */
  private static List<SizedBody> adults(
      BodyMeasure main, double[] bounds, double middle, Map<BodyMeasure, Slope> others) {
    List<SizedBody> sizes = new ArrayList<>();
    for (int i = 0; i + 1 < bounds.length; i++) {
      double centre = (bounds[i] + bounds[i + 1]) / 2;
      Body body = Body.of().with(main, Length.cm(centre));
      for (Map.Entry<BodyMeasure, Slope> other : others.entrySet()) {
        Slope slope = other.getValue();
        double grown = slope.middleCm() + slope.each() * (centre - middle);
        body = body.with(other.getKey(), Length.mm(Math.rint(10 * grown)));
      }
      sizes.add(sized(centre, body, bounds[i], bounds[i + 1]));
    }
    return sizes;
  }

  private static SizedBody sized(double centre, Body body, double from, double to) {
    return new SizedBody(
        Integer.toString((int) centre), body, new GirthBounds(Length.cm(from), Length.cm(to)));
  }

  static BodySizes children() {
    List<SizedBody> sizes = new ArrayList<>();
    for (int i = 0; i < CHILDREN.length; i++) {
      double tall = LEAST_HEIGHT_CM + i * HEIGHT_STEP_CM;
      double half = HEIGHT_STEP_CM / 2;
      sizes.add(sized(tall, child(tall, CHILDREN[i]), tall - half, tall + half));
    }
    return new BodySizes(HEIGHT, sizes);
  }

  private static Body child(double tall, double[] line) {
    return Body.of()
        .with(HEIGHT, Length.cm(tall))
        .with(CHEST_GIRTH, Length.cm(line[0]))
        .with(WAIST_GIRTH, Length.cm(line[1]))
        .with(HIP_GIRTH, Length.cm(line[2]))
        .with(HEAD_GIRTH, Length.cm(line[3]))
        .with(INSIDE_LEG, share(tall, 0.56, -12.5))
        .with(NECK_BASE_GIRTH, share(tall, 0.115, 17))
        .with(SHOULDER_LENGTH, share(tall, 0.07, 1))
        .with(ARM_LENGTH, share(tall, 0.33, -1))
        .with(SCYE_DEPTH, share(tall, 0.1, 3))
        .with(CERVICAL_TO_WAIST, share(tall, 0.2, 4))
        .with(BODY_RISE, share(tall, 0.1, 8))
        .with(ANKLE_GIRTH, share(tall, 0.075, 9))
        .withAge((int) line[4]);
  }

  /** What grows with the height, to the millimetre. */
  private static Length share(double tallCm, double each, double moreCm) {
    return Length.mm(Math.rint(10 * (each * tallCm + moreCm)));
  }
}
