package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.export.TestGarment;
import dev.drafting.knit.Draft;
import dev.drafting.knit.sewing.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class StepDrawingTest {
  private static final Draft VEST = TestGarment.vest("vest");

  private static Drawing picture(String title) {
    Step step =
        VEST.orderOfWork().stream().filter(s -> s.title().equals(title)).findFirst().orElseThrow();
    return StepDrawing.of(VEST, step);
  }

  private static Set<String> worked(Group piece) {
    return piece.strokes(StrokeStyle.WORKED).stream().map(Stroke::name).collect(Collectors.toSet());
  }

  @Test
  void aSeamShowsBothPiecesWithItsEdgesWorked() {
    Drawing sides = picture("Sew the side seams");
    assertEquals(List.of("front", "back"), sides.groups().stream().map(Group::name).toList());
    for (Group piece : sides.groups()) {
      assertEquals(Set.of("side"), worked(piece));
      assertEquals(2, piece.strokes(StrokeStyle.WORKED).size(), "both halves of the piece");
      assertEquals(piece.name(), piece.labels().get(0).text());
    }
  }

  @Test
  void aPieceOnTheFoldIsOpenedOutAndItsFoldNotDrawn() {
    Group front = picture("Turn up the hem").groups().get(0);
    assertEquals(460, front.bounds().width().toMm(), 1e-9);
    assertTrue(front.strokes().stream().noneMatch(stroke -> stroke.name().contains("fold")));
  }

  @Test
  void everyStepHasAPictureOfItsOwn() {
    for (Step step : VEST.orderOfWork()) {
      Drawing picture = StepDrawing.of(VEST, step);
      assertEquals(step.title(), picture.title());
      assertEquals(step.edges().isEmpty(), step.scene() != Step.Scene.EDGES, step.title());
      assertTrue(
          picture.groups().stream().anyMatch(g -> !g.strokes(StrokeStyle.WORKED).isEmpty()),
          step.title());
    }
  }

  /** A new user finds every piece of a step by the word that is printed on the paper. */
  @Test
  void stepsNameThePiecesAsThePaperDoes() {
    Set<String> printed =
        DraftDrawing.of(VEST).groups().stream()
            .flatMap(group -> group.labels().stream())
            .map(Label::text)
            .collect(Collectors.toSet());
    for (Step step : VEST.orderOfWork()) {
      for (EdgeRef edge : step.edges()) {
        assertTrue(printed.contains(edge.piece()), edge + " in " + printed);
      }
      boolean sewsASeam = step.title().startsWith("Sew the ");
      assertTrue(!sewsASeam || step.text().contains(step.edges().get(0).toString()), step.text());
    }
  }

  /** Two hundred pieces opened out side by side would be a picture 100 m wide. */
  @Test
  void ofVeryManyPiecesADozenIsShown() {
    Piece front = TestGarment.pattern().piece("front");
    List<Piece> many = new ArrayList<>();
    for (int i = 1; i <= 40; i++) {
      many.add(Piece.of("front " + i, front.edges()).withCutting(front.cutting()));
    }
    Draft draft =
        Draft.of(Pattern.of("many", many, List.of()))
            .withFabric("body", VEST.fabric("body"))
            .withFabric("rib", VEST.fabric("rib"));
    Step longest =
        draft.orderOfWork().stream()
            .max(Comparator.comparing(step -> step.edges().size()))
            .orElseThrow();
    Drawing picture = StepDrawing.of(draft, longest);
    assertEquals(13, picture.groups().size());
    assertEquals("and 28 more", picture.groups().get(12).labels().get(0).text());
  }
}
