package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One edge sewn to several: a cloth that lies flat, as it would be cut in one piece. */
class YokeTest {
  private static Piece panel(String name, double width) {
    Point right = new Point(width, 300);
    Point left = new Point(0, 300);
    return Piece.of(
            name,
            List.of(
                Edge.of("foot", Curve.line(new Point(0, 0), new Point(width, 0))),
                Edge.of("right", Curve.line(new Point(width, 0), right)),
                Edge.of("top", Curve.line(right, left)),
                Edge.of("left", Curve.line(left, new Point(0, 0)))))
        .withCutting(Cutting.single(1));
  }

  private static List<EdgeRef> edges(String... edges) {
    return Arrays.stream(edges).map(EdgeRef::parse).toList();
  }

  private static Seam yoke(String... feet) {
    return Seam.of("yoke", edges("base top"), edges(feet)).endToStart();
  }

  private static Opening rim(List<Piece> pieces, List<Seam> seams) {
    Assembly assembly = Assembly.of(Pattern.of("apron", pieces, seams));
    assertEquals(1, assembly.openings().size());
    assertEquals(1, assembly.eulerCharacteristic());
    return assembly.openings().get(0);
  }

  private static List<Long> angles(Opening opening) {
    return opening.stations().stream()
        .map(station -> Math.round(station.angle().toDegrees()))
        .sorted()
        .toList();
  }

  private static final Piece LEFT = panel("one", 120);
  private static final Piece RIGHT = panel("two", 80);
  private static final Seam MIDDLE = Seam.of("middle", "one right", "two left").endToStart();

  /** Sewn to each other as well, they are a rectangle of 200 x 600 mm: it turns once. */
  @Test
  void aYokeOfTwoPartsMakesARectangle() {
    List<Piece> pieces = List.of(panel("base", 200), LEFT, RIGHT);
    Opening rim = rim(pieces, List.of(yoke("one foot", "two foot"), MIDDLE));
    assertEquals(1600, rim.length().toMm(), 1e-9);
    assertEquals(-360, rim.turning().toDegrees(), 1e-9);
    assertEquals(List.of(90L, 90L, 90L, 90L), angles(rim).subList(0, 4));
  }

  /** Two feet of 120 and 80 mm on three tops of 50, 70 and 80: one joint meets the other one. */
  @Test
  void jointsThatMeetAreOne() {
    List<Piece> pieces =
        List.of(panel("first", 50), panel("second", 70), panel("third", 80), LEFT, RIGHT);
    List<Seam> seams =
        List.of(
            Seam.of(
                    "yoke",
                    edges("one foot", "two foot"),
                    edges("third top", "second top", "first top"))
                .endToStart(),
            MIDDLE,
            Seam.of("left", "first right", "second left").endToStart(),
            Seam.of("right", "second right", "third left").endToStart());
    Opening rim = rim(pieces, seams);
    assertEquals(1600, rim.length().toMm(), 1e-9);
    assertEquals(-360, rim.turning().toDegrees(), 1e-9);
  }
}
