package dev.drafting.export.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.template.Templates;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoredDraftTest {
  private static final StoredTypes OWN =
      StoredTypes.usual()
          .withFinish(
              "scallops",
              settings -> new Scallops(Length.parse(settings.getOrDefault("depth", ""))))
          .withAlteration(
              "raise-hem",
              settings -> new RaisedHem(Length.parse(settings.getOrDefault("amount", ""))));

  /** A finish that the library does not have. */
  private record Scallops(Length depth) implements Finish {
    @Override
    public String id() {
      return "scallops";
    }

    @Override
    public Map<String, String> settings() {
      return Map.of("depth", depth.toString());
    }

    @Override
    public Profile profile() {
      return Profile.of(
          new ProfileLine(LineRole.CUT, depth), new ProfileLine(LineRole.JOIN, Length.ZERO));
    }

    @Override
    public String describe() {
      return "scallops " + depth + " deep";
    }
  }

  /** An alteration that the library does not have. */
  private record RaisedHem(Length amount) implements Alteration {
    @Override
    public String id() {
      return "raise-hem";
    }

    @Override
    public Map<String, String> settings() {
      return Map.of("amount", amount.toString());
    }

    @Override
    public String describe() {
      return "raise the hem by " + amount;
    }

    @Override
    public Pattern applyTo(Pattern pattern) {
      return Alteration.shorten("side", Length.mm(50), amount).applyTo(pattern);
    }
  }

  private static Piece half(String name, Finish top) {
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0))),
            Edge.of("side", Curve.line(new Point(200, 0), new Point(200, 300)))
                .withFinish(SeamFinish.of(Length.mm(7))),
            Edge.of("top", Curve.line(new Point(200, 300), new Point(0, 300))).withFinish(top),
            Edge.onFold(Curve.line(new Point(0, 300), new Point(0, 0)))));
  }

  private static Draft tube(Finish top) {
    Seam side = Seam.of("side", "front side", "back side");
    Pattern pattern =
        Pattern.of("tube", List.of(half("front", top), half("back", top)), List.of(side));
    return Draft.of(pattern)
        .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4).withWidth(Length.cm(150)));
  }

  private static Draft plain() {
    return tube(SeamFinish.of(Length.mm(7)));
  }

  /** Beside a thousand steps of an edge lie as many of its allowance, each near many others. */
  @Test
  void anEdgeOfTooManySegmentsIsRefused() {
    List<Segment> steps = new ArrayList<>();
    StringBuilder written = new StringBuilder("[ [ 0.0, 0.0 ]");
    for (int i = 0; i < 1_001; i++) {
      Point to = new Point(200.0 * (i + 1) / 1_001, i % 2 == 1 || i == 1_000 ? 0 : 0.02);
      steps.add(new Line(i == 0 ? new Point(0, 0) : steps.get(i - 1).end(), to));
      written.append(", [ ").append(to.x()).append(", ").append(to.y()).append(" ]");
    }
    Edge stepped = Edge.of("hem", Curve.of(steps));
    Piece half = half("front", SeamFinish.of(Length.mm(7)));
    List<Edge> edges = new ArrayList<>(half.edges());
    edges.set(0, stepped);
    Piece fine = Piece.of("front", edges);
    String what = "an edge has too many segments. Found: 1001. Accepted: at most 1000 in an edge";
    StoredDraft kept = StoredDraft.of(Draft.of(Pattern.of("towel", List.of(fine), List.of())));
    assertTrue(
        String.valueOf(assertThrows(DraftingException.class, kept::toJson).getMessage())
            .contains(what));
    String json = StoredDraft.of(plain()).toJson();
    String hem = "[ [ 0.0, 0.0 ], [ 200.0, 0.0 ]";
    assertTrue(json.contains(hem));
    String unsealed = json.substring(0, json.lastIndexOf(",\n")) + "\n}\n";
    assertTrue(message(unsealed.replace(hem, written)).contains(what));
  }

  private static List<String> ids(StoredDraft read) {
    return read.findings().stream().map(Finding::id).toList();
  }

  private static String message(String json) {
    return String.valueOf(
        assertThrows(DraftingException.class, () -> StoredDraft.parse(json)).getMessage());
  }

  @Test
  void keepsTracingsAndLayPlans() {
    Draft draft = plain();
    Tracing tracing =
        Tracing.of(
            "front",
            Extent.WHOLE,
            List.of(
                TracedEdge.of("hem", 0.1, -0.0, 1 / 3.0, 2),
                TracedEdge.of("side", 0, 0, 0, 9).reordered()));
    LayPlan plan = draft.lay("body").plan(1, 5);
    StoredDraft kept = StoredDraft.of(draft).withTracings(List.of(tracing)).withLay("body", plan);
    StoredDraft read = StoredDraft.parse(kept.toJson());
    assertEquals(kept, read);
    assertEquals(kept.hashCode(), read.hashCode());
    assertEquals(List.of(tracing), read.tracings());
    assertEquals(Map.of("body", plan), read.lays());
    assertEquals("tube, with 1 tracing and lay plans for body", read.toString());
    LayPlan other = plain().lay("body", Cloth.of(Length.cm(90))).plan(1, 0);
    assertEquals(other, StoredDraft.of(draft).withLay("body", other).lays().get("body"));
    LayPlan foreign =
        draft.withAlteration(Alteration.takeIn("side", Length.mm(5)), "").lay("body").plan(1, 0);
    assertThrows(DraftingException.class, () -> StoredDraft.of(draft).withLay("body", foreign));
  }

  @Test
  void keepsALap() {
    StoredDraft kept = StoredDraft.of(Draft.of(Templates.installed().get("baby-top").pattern()));
    assertTrue(kept.toJson().contains("\"lapped\""));
    StoredDraft read = StoredDraft.parse(kept.toJson());
    assertEquals(List.of(), read.findings());
    assertEquals(kept, read);
  }

  @Test
  void anUnknownFinishKeepsItsLinesAndItsSettings() {
    String json = StoredDraft.of(tube(new Scallops(Length.mm(12)))).toJson();
    StoredDraft read = StoredDraft.parse(json);
    assertEquals(List.of("stored-finish-unknown"), ids(read));
    assertEquals(
        "The finish \"scallops\" (scallops 12 mm deep) is not known here. Its lines are drawn as they"
            + " were stored; strips and steps of it are missing.",
        read.findings().get(0).reason());
    assertEquals(12, read.draft().cutPieces().get(0).cutLine().bounds().maxY() - 300, 1e-9);
    assertEquals(json, read.toJson());
    StoredDraft known = StoredDraft.parse(read.toJson(), OWN);
    assertEquals(List.of(), known.findings());
    assertEquals(tube(new Scallops(Length.mm(12))), known.draft());
  }

  @Test
  void anUnknownAlterationKeepsItsResult() {
    Draft draft = plain().withAlteration(new RaisedHem(Length.mm(20)), "too long");
    String json = StoredDraft.of(draft).toJson();
    StoredDraft read = StoredDraft.parse(json);
    assertEquals(List.of("stored-alteration-unknown"), ids(read));
    assertEquals(draft.pattern(), read.draft().pattern());
    assertEquals(json, read.toJson());
    assertEquals(draft, StoredDraft.parse(json, OWN).draft());
    Draft further = read.draft().withAlteration(Alteration.takeIn("side", Length.mm(5)), "");
    assertEquals(195, further.pattern().piece("front").edge("hem").length().toMm(), 1e-9);
    DraftingException refused =
        assertThrows(
            DraftingException.class,
            () -> further.withAlterations(further.alterations().on(draft.pattern())));
    assertTrue(refused.what().contains("only its result is known"), refused.what());
  }

  /** A finish by an alteration is known where the finish is. */
  @Test
  void anAlterationToAnUnknownFinishIsUnknownToo() {
    Draft draft =
        plain().withAlteration(Alteration.finish("front top", new Scallops(Length.mm(9))), "");
    StoredDraft read = StoredDraft.parse(StoredDraft.of(draft).toJson());
    assertTrue(ids(read).contains("stored-alteration-unknown"), ids(read).toString());
    assertEquals(draft, StoredDraft.parse(StoredDraft.of(draft).toJson(), OWN).draft());
  }

  @Test
  void whatComesOutOtherwiseIsTold() {
    Draft draft = tube(new Scallops(Length.mm(12)));
    StoredTypes deeper =
        StoredTypes.usual().withFinish("scallops", settings -> new Scallops(Length.mm(13)));
    StoredDraft read = StoredDraft.parse(StoredDraft.of(draft).toJson(), deeper);
    assertEquals(List.of("stored-finish-changed"), ids(read));
    Draft raised = plain().withAlteration(new RaisedHem(Length.mm(20)), "");
    StoredTypes higher =
        StoredTypes.usual().withAlteration("raise-hem", s -> new RaisedHem(Length.mm(21)));
    StoredDraft kept = StoredDraft.parse(StoredDraft.of(raised).toJson(), higher);
    assertEquals(List.of("stored-alteration-changed"), ids(kept));
    assertEquals(raised.pattern(), kept.draft().pattern());
  }

  @Test
  void aFieldThatNobodyKnowsIsTold() {
    String json = StoredDraft.of(plain()).toJson();
    String more = json.replaceFirst("\"cloth\" :", "\"colour\" : \"blue\", \"cloth\" :");
    assertTrue(message(more).contains("the file was changed after it was stored"), message(more));
    StoredDraft read = StoredDraft.parse(unsealed(more));
    assertEquals(List.of("stored-seal-missing", "stored-field-unknown"), ids(read));
    assertTrue(
        read.findings().get(1).reason().contains("field draft / pattern / pieces 1 / colour"));
  }

  private static String unsealed(String json) {
    return json.substring(0, json.indexOf(",\n  \"sha256\"")) + "\n}\n";
  }

  @Test
  void otherLineEndsDoNoHarm() {
    String json = StoredDraft.of(plain()).toJson();
    assertEquals(plain(), StoredDraft.parse(json.replace("\n", "\r\n")).draft());
  }

  @Test
  void refusesWhatIsNoStoredDraft() {
    assertEquals("stored draft: the file is empty. Accepted: one JSON object.", message(""));
    assertEquals(
        "stored draft: this is no stored draft. Accepted: one JSON object.", message("[1, 2]"));
    assertEquals(
        "stored draft: a field is missing. Accepted: the field \"format\".", message("{}"));
    assertEquals(
        "stored draft, line 1: a field is given twice. Accepted: a stored draft, as it was written.",
        message("{\"format\": 1, \"format\": 2}"));
    assertEquals(
        "stored draft, line 1: the file ends too early. Accepted: a stored draft, as it was written.",
        message("{\"format\": [1, 2"));
    assertEquals(
        "stored draft: this is no stored draft. Found: recipe. Accepted: the format \"knit draft\".",
        message("{\"format\": \"recipe\", \"version\": 1}"));
    assertEquals(
        "stored draft: the file is of another version. Found: 2. Accepted: version 1; a later one"
            + " needs a later library.",
        message("{\"format\": \"knit draft\", \"version\": 2}"));
    assertTrue(message("{\"a\":".repeat(30)).contains("nested too deep"));
    assertTrue(message("{\"format\": 1e999}").contains("a number is too large"));
    String json = unsealed(StoredDraft.of(plain()).toJson());
    assertEquals(
        "stored draft, field draft / pattern / pieces 1 / cut: the word is unknown. Found: on bias."
            + " Accepted: on fold, pairs, single.",
        message(json.replaceFirst("\"on fold\"", "\"on bias\"")));
    assertTrue(
        message(json.replaceFirst("\\[ 200.0, 0.0 \\]", "[ 200.0, 0.0, 1.0 ]"))
            .contains("this is no curve"));
  }

  @Test
  void writesAFileAtOnceAndReadsIt(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("tube.draft.json");
    StoredDraft kept = StoredDraft.of(plain());
    assertEquals(file, kept.write(file));
    assertEquals(file, kept.write(file));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(file), files.toList());
    }
    assertEquals(kept.toJson(), Files.readString(file));
    assertEquals(kept, StoredDraft.read(file));
    assertEquals(
        "none.json: the file is missing. Accepted: a stored draft.",
        assertThrows(DraftingException.class, () -> StoredDraft.read(folder.resolve("none.json")))
            .getMessage());
    assertThrows(DraftingException.class, () -> StoredDraft.read(folder));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    kept.write(out);
    assertEquals(kept.toJson(), out.toString(StandardCharsets.UTF_8));
  }

  /** Files of earlier versions; this one will be such a file for every later version. */
  @Test
  void readsTheFilesOfEarlierVersions() throws IOException {
    for (String name : List.of("draft-0.1.json")) {
      try (InputStream in = StoredDraftTest.class.getResourceAsStream(name)) {
        String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        StoredDraft read = StoredDraft.parse(json);
        assertEquals(List.of(), read.findings(), name);
        assertEquals(json, read.toJson(), name);
        assertEquals("Boathouse vest, A cotton jersey", read.draft().name());
        assertFalse(read.tracings().isEmpty());
        assertFalse(read.lays().isEmpty());
        assertFalse(read.draft().alterations().entries().isEmpty());
        assertEquals(3, read.draft().strips().size());
      }
    }
  }

  @Test
  void anIdIsTakenOnce() {
    DraftingException refused =
        assertThrows(
            DraftingException.class, () -> StoredTypes.usual().withFinish("seam", s -> null));
    assertEquals("there is another finish of this id", refused.what());
    assertThrows(DraftingException.class, () -> OWN.withAlteration("gape", s -> null));
  }

  @Test
  void isSerializable() throws IOException, ClassNotFoundException {
    StoredDraft kept = StoredDraft.of(plain());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(kept);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(kept, in.readObject());
    }
  }
}
