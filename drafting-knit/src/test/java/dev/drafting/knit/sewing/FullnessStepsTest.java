package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A tube of two parts, the lower one wider than the upper one. */
class FullnessStepsTest {
  private static Piece part(String name, double half, double height) {
    Point a = new Point(0, 0);
    Point b = new Point(half, 0);
    Point c = new Point(half, height);
    Point d = new Point(0, height);
    return Piece.of(
        name,
        List.of(
            Edge.of("lower", Curve.line(a, b)),
            Edge.of("back seam", Curve.line(b, c)),
            Edge.of("upper", Curve.line(c, d)),
            Edge.onFold(Curve.line(d, a))));
  }

  private static String step(Fullness fullness) {
    Pattern skirt =
        Pattern.of(
                "tiered skirt",
                List.of(part("yoke", 420, 150), part("tier", 600, 300)),
                List.of(
                    Seam.of("tier", "tier upper", "yoke lower")
                        .endToStart()
                        .withEase(Length.cm(18))
                        .drawnIn(fullness),
                    Seam.mirrored("yoke back", EdgeRef.parse("yoke / back seam")),
                    Seam.mirrored("tier back", EdgeRef.parse("tier / back seam"))))
            .withSeamAllowance(Length.mm(7))
            .withFinish("tier lower", TurnedHem.once(Length.mm(20)))
            .withFinish("yoke upper", TurnedHem.once(Length.mm(20)));
    Draft draft = Draft.of(skirt).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.40));
    assertEquals(fullness.pleatCount() == 0 ? 3 : 4, notches(draft, "tier"));
    return draft.orderOfWork().stream()
        .map(Step::text)
        .filter(text -> text.contains("tier / upper"))
        .findFirst()
        .orElseThrow();
  }

  private static int notches(Draft draft, String piece) {
    return draft.cutPieces().stream()
        .filter(cut -> cut.name().equals(piece))
        .findFirst()
        .orElseThrow()
        .notches()
        .size();
  }

  @Test
  void saysHowMuchIsGathered() {
    String text = step(Fullness.gathered());
    assertTrue(text.contains("gather tier / upper from 60 cm to 42 cm, 70 % of its length"), text);
    assertTrue(text.contains("match the quarters"), text);
  }

  @Test
  void saysHowDeepThePleatsAre() {
    String text = step(Fullness.pleats(2));
    assertTrue(text.contains("lay 2 pleats in tier / upper, 45 mm deep"), text);
  }
}
