package dev.drafting.examples;

import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Templates;
import dev.drafting.export.drawing.ChangeDrawing;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.LayDrawing;
import dev.drafting.export.drawing.NestedDrawing;
import dev.drafting.export.drawing.PieceDrawing;
import dev.drafting.export.drawing.StepDrawing;
import dev.drafting.export.drawing.TracingDrawing;
import dev.drafting.export.source.Garment;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.BodyPassage;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.sewing.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A picture of the demo vest for every step of the job that can be drawn. */
final class GuidePictures {
  private static final int ROUNDS = 60;

  private final Garment garment;
  private final Draft draft;

  GuidePictures(Garment garment) {
    this.garment = garment;
    this.draft = garment.makes().values().iterator().next();
  }

  /** The drawings by the names of their files. */
  Map<String, Drawing> drawings() {
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    drawings.put(
        "traced",
        TracingDrawing.of(
            "front, traced and trued",
            List.of(garment.tracings().get(0)),
            List.of(garment.trued().get(0))));
    drawings.put("finished", NestedDrawing.of("finished outlines", finished()));
    drawings.put("band", BandPicture.of(neck().fit()).drawing());
    drawings.put("findings", tooTight(garment.make("C pique")));
    drawings.put("cut", DraftDrawing.of(draft));
    drawings.put("lay", LayDrawing.of("body, laid", lay()));
    drawings.put("sew", StepDrawing.of(draft, seam()));
    drawings.put(
        "changes",
        ChangeDrawing.of(
            draft.withAlterations(AlterAfterTryOn.tryOn(draft.alterations())).alterations()));
    drawings.put("sizes", NestedDrawing.of("sizes", sizes()));
    return drawings;
  }

  private Map<String, Pattern> finished() {
    return Map.of("as traced", garment.pattern());
  }

  /** The first piece with the opening marked that does not go over the head. */
  private static Drawing tooTight(Draft tight) {
    BodyPassage passage = tight.headOpening().orElseThrow();
    List<Finding> marks = new ArrayList<>();
    for (OpeningPart part : passage.opening().parts()) {
      Place edge = Place.edge(part.edge().piece(), part.edge().edge());
      marks.add(Finding.problem("passage", edge, passage.toString()));
    }
    return Drawing.of(
        tight.name(), PieceDrawing.of(tight.cutPieces().get(0)).withFindings(marks).group());
  }

  private Strip neck() {
    return draft.strips().stream()
        .filter(strip -> strip.opening().name().equals("neck"))
        .findFirst()
        .orElseThrow();
  }

  private LayPlan lay() {
    return draft.lay("body").plan(1, ROUNDS);
  }

  private Step seam() {
    return draft.orderOfWork().stream()
        .filter(step -> step.title().contains("side seam"))
        .findFirst()
        .orElseThrow();
  }

  private static Map<String, Pattern> sizes() {
    return SizesMade.asUsual(Templates.installed().get("sleeveless-top")).patterns();
  }
}
