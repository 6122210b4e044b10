package dev.drafting.export.source;

import static dev.drafting.export.source.TubeSkirt.DESCRIPTION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.fabric.Shrinkage;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.sewing.Machines;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.StitchType;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a description of a garment may say, and what is refused. */
class GarmentFolderTest {
  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    TubeSkirt.write(folder, DESCRIPTION);
  }

  private String refused(String from, String to) throws IOException {
    return TubeSkirt.refused(folder, from, to);
  }

  /** The pocket lies 3 cm from the fold and 12 cm up; its three stitched edges are turned in. */
  @Test
  void aPocketIsLaidOnTheFront() throws IOException {
    String raw =
        "{\"edges\": [\"pocket right\", \"pocket bottom\", \"pocket left\"], \"finish\": \"raw\"},";
    String patches =
        "\"patches\": [{\"piece\": \"pocket\", \"on\": \"front\", \"across\": \"3 cm\","
            + " \"up\": \"12 cm\", \"open\": [\"top\"], \"allowance\": \"8 mm\"}], \"finishes\": [";
    String laid = DESCRIPTION.replace(raw, "").replace("\"finishes\": [", patches);
    Files.writeString(folder.resolve("garment.json"), laid);
    Pattern pattern = GarmentFolder.read(folder).pattern();
    Patch patch = pattern.patches().get(0);
    assertEquals(List.of("top"), patch.openEdges());
    assertEquals(30, patch.outline(pattern).bounds().minX(), 1e-6);
    double hem = pattern.piece("front").outline().bounds().minY();
    assertEquals(hem + 120, patch.outline(pattern).bounds().minY(), 1e-6);
    assertEquals(
        "seam with 8 mm allowance",
        pattern.edge(EdgeRef.parse("pocket bottom")).finish().describe());
    Files.writeString(
        folder.resolve("garment.json"), DESCRIPTION.replace("\"finishes\": [", patches));
    String both = Refusal.of(() -> GarmentFolder.read(folder));
    assertTrue(both.contains("in a seam and has a finish as well"), both);
    Files.writeString(
        folder.resolve("garment.json"), laid.replace("\"on\": \"front\"", "\"on\": \"hat\""));
    String unknown = Refusal.of(() -> GarmentFolder.read(folder));
    assertTrue(unknown.contains("hat") && unknown.contains("patches"), unknown);
  }

  @Test
  void aFrontIsOpenedByAPlacket() throws IOException {
    String plackets =
        "\"plackets\": [{\"edge\": \"front waist\", \"length\": \"14 cm\", \"width\": \"2 cm\","
            + " \"fasteners\": 4}], \"finishes\": [";
    String opened = DESCRIPTION.replace("\"finishes\": [", plackets);
    Files.writeString(folder.resolve("garment.json"), opened);
    assertEquals(
        "[placket at front / waist, 140 mm long, 20 mm wide, with 4 fasteners]",
        GarmentFolder.read(folder).pattern().plackets().toString());
    Files.writeString(
        folder.resolve("garment.json"), opened.replace("front waist\", \"l", "front side\", \"l"));
    String sewn = Refusal.of(() -> GarmentFolder.read(folder));
    assertTrue(sewn.contains("plackets") && sewn.contains("sewn in a seam"), sewn);
  }

  @Test
  void aLapIsCaughtInASeam() throws IOException {
    String warmer = "{\"name\": \"wrist\", \"join\": [\"wrist warmer left end\"";
    String lap =
        "{\"name\": \"lap\", \"join\": [\"wrist warmer left end\", \"pocket right\"],"
            + " \"allowance\": \"5 mm\", \"kind\": \"lap\", \"meet\": \"end to start\"}, ";
    Files.writeString(
        folder.resolve("garment.json"),
        DESCRIPTION
            .replace(warmer, lap + warmer)
            .replace("\"pocket right\", \"pocket bottom\"", "\"pocket bottom\""));
    Seam read = GarmentFolder.read(folder).pattern().seams().get(1);
    assertEquals("lap: wrist warmer / left end over pocket / right, end to start", read.toString());
    String kind = refused("\"ease\": \"2 mm\"", "\"kind\": \"tack\"");
    assertTrue(kind.contains("seam, lap"), kind);
    String loose = refused("\"meet\": \"end to start\"}", "\"kind\": \"lap\"}");
    assertTrue(loose.contains("the edge has neither a seam nor a finish"), loose);
  }

  @Test
  void piecesOfEveryKindAreRead() {
    Garment garment = GarmentFolder.read(folder);
    assertEquals(
        "Tube skirt: pieces front, back, pocket, wrist warmer; makes plain", garment.toString());
    Pattern pattern = garment.pattern();
    assertEquals("cut 1 on the fold", pattern.piece("back").cutting().toString());
    assertEquals("cut 1", pattern.piece("pocket").cutting().toString());
    assertEquals("cut 1 pair", pattern.piece("wrist warmer").cutting().toString());
    assertEquals("rib", pattern.piece("wrist warmer").cloth());
    assertEquals(200, pattern.piece("back").edge("hem").length().toMm(), 1e-6);
    assertTrue(pattern.piece("pocket").corner("top", "left").isPointed());
    assertEquals("", garment.about());
  }

  @Test
  void aSeamSaysHowItIsDrawnIn() throws IOException {
    assertEquals(Fullness.eased(), GarmentFolder.read(folder).pattern().seams().get(0).fullness());
    String pleated =
        DESCRIPTION.replace("\"ease\": \"2 mm\"", "\"ease\": \"2 mm\", \"drawnIn\": \"2 pleats\"");
    Files.writeString(folder.resolve("garment.json"), pleated);
    assertEquals(
        Fullness.pleats(2), GarmentFolder.read(folder).pattern().seams().get(0).fullness());
    String wrong =
        refused("\"ease\": \"2 mm\"", "\"ease\": \"2 mm\", \"drawnIn\": \"some pleats\"");
    assertTrue(wrong.contains("garment.json") && wrong.contains("such as 3 pleats"), wrong);
  }

  @Test
  void seamsAndFinishesAreRead() {
    Pattern pattern = GarmentFolder.read(folder).pattern();
    List<Seam> seams = pattern.seams();
    assertEquals(Length.mm(2), seams.get(0).ease());
    assertEquals(List.of(new EdgeRef("back", "side")), seams.get(0).second());
    assertTrue(seams.get(1).isEndToStart());
    assertEquals(Length.inches("1/4"), cut(pattern, "front", "side"));
    assertEquals(Length.mm(29), cut(pattern, "front", "hem"));
    assertEquals(Length.mm(-23), cut(pattern, "back", "waist"));
    assertEquals(Length.mm(10), cut(pattern, "pocket", "top"));
    assertEquals(Length.ZERO, cut(pattern, "pocket", "left"));
    assertEquals(Length.mm(10), cut(pattern, "wrist warmer", "lower"));
    assertEquals(Length.mm(-2), cut(pattern, "wrist warmer", "upper"));
  }

  private static Length cut(Pattern pattern, String piece, String edge) {
    return pattern.piece(piece).edge(edge).finish().profile().cut().orElseThrow();
  }

  @Test
  void fabricsWearerAndStripsAreRead() {
    Draft draft = GarmentFolder.read(folder).make("plain");
    assertEquals("Tube skirt, plain", draft.name());
    Fabric rib = draft.fabric("band");
    assertEquals(0.75, rib.stretchAcross(), 1e-12);
    assertEquals(0.01, rib.tension());
    assertEquals(0.95, draft.fabric("body").recovery().orElseThrow());
    Fabric body = draft.fabric("body");
    assertEquals(Shrinkage.measured(Length.cm(50), Length.cm(49), Length.cm(48)), body.shrinkage());
    assertFalse(body.curls());
    assertFalse(body.isOneWay());
    assertEquals(0.07, body.uncertainty());
    assertEquals(
        Original.of(rib).withGirth(Length.cm(84)).withSeams("side").withShoulders(),
        draft.original().orElseThrow());
    assertEquals(9, draft.wearer().age().orElseThrow());
    assertEquals(
        "shoulders 90 cm, hips 80 cm, hand 18 cm, foot 25 cm, 9 years", draft.wearer().toString());
    assertEquals(
        List.of("shorter than its edge", "of its edge"),
        draft.strips().stream()
            .map(strip -> strip.rule().toString().replaceAll("^[0-9.]+ [a-z%]+ |,.*", ""))
            .distinct()
            .sorted((a, b) -> b.compareTo(a))
            .toList());
  }

  @Test
  void aGarmentIsAValueThatCanBeStored() throws IOException, ClassNotFoundException {
    Garment garment = GarmentFolder.read(folder);
    assertEquals(garment, GarmentFolder.read(folder));
    assertEquals(garment.hashCode(), GarmentFolder.read(folder).hashCode());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(garment);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(garment, in.readObject());
    }
  }

  @Test
  void anUnknownMakeIsRefused() {
    Garment garment = GarmentFolder.read(folder);
    assertEquals(
        "Tube skirt: there is no such make. Found: fancy. Accepted: plain.",
        Refusal.of(() -> garment.make("fancy")));
  }

  @Test
  void whatDoesNotFitTogetherIsRefused() throws IOException {
    assertTrue(
        refused("[[\"top\", \"left\"]]", "[[\"top\", \"bottom\"]]")
            .contains("these edges do not meet in a corner. Found: top, bottom."));
    assertTrue(
        refused("\"straight\": [\"waist\"]", "\"straight\": [\"neck\"]")
            .contains("field pieces 2 / straight 1: the edge is unknown. Found: neck."));
    assertTrue(
        refused("\"cut\": \"single\"", "\"cut\": \"on the fold\"").contains("field pieces 3: "));
    assertTrue(
        refused("\"shorter by\", \"length\": \"5 cm\"", "\"loop\", \"ratio\": \"50 %\"")
            .contains(
                "the field is unknown. Found: ratio. Accepted: opening, rule, length, join,"
                    + " joinAt, marks."));
    assertTrue(
        refused("\"opening\": \"upper\"", "\"opening\": \"waist\"")
            .contains("two of them have one name. Found: waist."));
    assertTrue(
        refused("\"turn\": \"2 mm\"", "\"turn\": \"7 mm\"").contains("the length is out of range"));
  }

  private Draft with(String from, String to) throws IOException {
    assertTrue(DESCRIPTION.contains(from), from);
    Files.writeString(folder.resolve("garment.json"), DESCRIPTION.replace(from, to));
    return GarmentFolder.read(folder).make("plain");
  }

  private static String finish(Draft draft, String opening) {
    return draft.openings().stream()
        .filter(known -> known.name().startsWith(opening))
        .map(known -> known.finish().settings().toString())
        .findFirst()
        .orElse("");
  }

  @Test
  void stripsOfEveryKindAreRead() throws IOException {
    String band = "\"finish\": \"folded band\", \"showing\": \"3 cm\",";
    String cuff = "\"finish\": \"cuff\", \"readyEdged\": true, \"showing\": \"3 cm\",";
    assertEquals(
        "{showing=30 mm, allowance=7 mm, cloth=band, topstitch=, noun=cuff, intent=draws in,"
            + " edge=ready}",
        finish(with(band, cuff), "waist"));
    String waist = "\"finish\": \"waist rib\", \"intent\": \"hugs\", \"showing\": \"3 cm\",";
    assertTrue(finish(with(band, waist), "waist").contains("noun=waist rib, intent=hugs"));
    String strip = "\"finish\": \"faced strip\", \"tuck\": \"5 mm\", \"depth\": \"3 cm\",";
    assertEquals(
        "{depth=30 mm, allowance=7 mm, tuck=5 mm, cloth=band, intent=hugs}",
        finish(with(band, strip), "waist"));
    String binding = "\"wrapped binding\", \"showing\": \"6 mm\"";
    assertTrue(
        finish(with(binding, binding + ", \"layers\": \"folded in half first\""), "upper")
            .contains("layers=folded in half first"));
    String hem = "\"finish\": \"hem twice\", \"turnIn\": \"9 mm\", \"depth\": \"2 cm\"";
    String casing =
        "\"finish\": \"casing\", \"turnIn\": \"9 mm\", \"depth\": \"2 cm\", \"elastic\": \"15 mm\","
            + " \"girth\": \"70 cm\", \"shorter\": \"8 %\", \"overlap\": \"1 cm\"";
    assertEquals(
        "{depth=20 mm, turn-in=9 mm, elastic=15 mm, girth=700 mm, shortening=0.08, overlap=10 mm}",
        finish(with(hem, casing), "hem"));
  }

  @Test
  void marksJoinsAndSewnResultsAreRead() throws IOException {
    String join = "\"join\": \"6 mm\"";
    Draft draft =
        with(join, join + ", \"joinAt\": \"centre front\", \"marks\": \"more on curves\"");
    assertTrue(
        draft.strips().stream()
            .anyMatch(
                strip ->
                    strip
                        .rule()
                        .toString()
                        .endsWith(" for the join at the centre front, stretched more on curves")));
    String sewn =
        "\"sewn\": [{\"fabric\": \"rib\", \"edge\": \"80 cm\", \"loop\": \"79 cm\", \"seen\":"
            + " \"lies flat\"}], \"makes\"";
    Draft taught = with("\"makes\"", sewn);
    assertEquals(
        List.of("Rib: a loop of 79 cm on a finished edge of 80 cm lies flat"),
        taught.sewnResults().stream().map(Object::toString).toList());
    assertEquals(0.0125, taught.fabric("rib").tension(), 1e-9);
  }

  @Test
  void badStripsAreRefusedWithPlaceAndValue() throws IOException {
    String join = "\"join\": \"6 mm\"";
    assertEquals(
        "garment.json, line 33, column 5, field strips 1: opening waist: the strip cannot be joined"
            + " there: its opening has no such place. Found: elbow. Accepted: side, centre front,"
            + " centre back.",
        refused(join, join + ", \"joinAt\": \"elbow\""));
    assertTrue(
        refused(join, join + ", \"marks\": \"wide\"")
            .contains(
                "field strips 1 / marks: the way of marking is unknown. Found: wide. Accepted: even, more on"
                    + " curves."));
    String cloth = "\"cloth\": \"band\"";
    assertTrue(
        refused(cloth, cloth + ", \"intent\": \"waves\"")
            .contains(
                "/ intent: the intent is unknown. Found: waves. Accepted: lies flat, hugs, draws"
                    + " in."));
    assertTrue(
        refused(cloth, cloth + ", \"readyEdged\": \"yes\"")
            .contains("field finishes 1 / readyEdged"));
    assertTrue(
        refused("\"hem once\", \"depth\": \"1 cm\"", "\"casing\", \"depth\": \"2 mm\"")
            .contains("the depth of the casing is out of range. Found: 2 mm."));
    assertTrue(
        refused("\"makes\"", "\"sewn\": [{\"fabric\": \"felt\"}], \"makes\"")
            .contains("field sewn 1 / fabric: the fabric is unknown. Found: felt."));
  }

  private static final String WEARER =
      "\"wearer\": {\"age\": 9, \"hips\": \"80 cm\", \"shoulders\": \"90 cm\", \"hand\": \"18 cm\","
          + " \"foot\": \"25 cm\"},";

  @Test
  void howTheGarmentIsSewnIsRead() throws IOException {
    Draft draft =
        with(
            WEARER,
            WEARER
                + """
                    "sewing": {"seams": "three-thread overlocker", "hems": "twin needle", "rows": "3 mm",
                      "bands": "flat", "tape": ["wrist"], "has": ["elastic", "nightwear"],
                      "stitches": [{"at": "side", "stitch": "overlock and chain"},
                        {"at": "hem", "stitch": "zigzag"}]},
                    """);
    SewingChoices choices = draft.sewingChoices();
    assertEquals(Construction.FLAT, choices.construction());
    assertEquals(List.of("wrist"), choices.taped());
    assertEquals(List.of(Detail.ELASTIC, Detail.NIGHTWEAR), choices.details());
    Machines machines = choices.machines();
    assertEquals(StitchType.OVERLOCK_THREE, machines.stitchOfSeam("wrist").type());
    assertEquals(StitchType.OVERLOCK_AND_CHAIN, machines.stitchOfSeam("side").type());
    assertEquals(StitchType.ZIGZAG, machines.stitchOfHem("hem").type());
    assertEquals(Length.mm(3), machines.stitchOfHem("lower").width());
    assertEquals(Length.inches("1/4"), cut(draft.pattern(), "front", "side"), "its own allowance");
  }

  @Test
  void aSeamMayLeaveItsAllowanceToTheMachine() throws IOException {
    String own = "\"allowance\": \"5 mm\", \"meet\"";
    assertTrue(refused(own, "\"meet\"").contains("the field \"allowance\""));
    Files.writeString(
        folder.resolve("garment.json"),
        DESCRIPTION
            .replace(own, "\"meet\"")
            .replace(WEARER, WEARER + "\"sewing\": {\"seams\": \"zigzag machine\"},"));
    Pattern pattern = GarmentFolder.read(folder).make("plain").pattern();
    assertEquals(Length.mm(10), cut(pattern, "wrist warmer", "left end"));
    assertEquals(Length.inches("1/4"), cut(pattern, "front", "side"));
  }

  @Test
  void unknownMachinesSeamsAndThingsAreRefused() throws IOException {
    String sewing = WEARER + "\"sewing\": {\"seams\": \"zigzag machine\"";
    assertTrue(
        refused(WEARER, WEARER + "\"sewing\": {\"seams\": \"loom\"},")
            .contains("zigzag machine, three-thread overlocker, four-thread overlocker"));
    assertTrue(refused(WEARER, sewing + ", \"tape\": [\"elbow\"]},").contains("side, wrist"));
    assertTrue(refused(WEARER, sewing + ", \"has\": [\"wings\"]},").contains("nightwear, a cord"));
    assertTrue(
        refused(WEARER, sewing + ", \"stitches\": [{\"at\": \"elbow\", \"stitch\": \"zigzag\"}]},")
            .contains("side, wrist"));
    assertTrue(refused(WEARER, sewing + ", \"rows\": \"0 mm\"},").contains("1 mm to 12 mm"));
  }
}
