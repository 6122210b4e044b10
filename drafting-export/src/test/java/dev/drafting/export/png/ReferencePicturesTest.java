package dev.drafting.export.png;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.LayDrawing;
import dev.drafting.export.drawing.NestedDrawing;
import dev.drafting.export.drawing.PieceDrawing;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.hem.TurnedHem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/**
 * Small drawings pixel by pixel against pictures that somebody has looked at. The pictures were
 * made under Java 17, and Java 25 draws the same pixels.
 */
class ReferencePicturesTest {
  /** A doll's front: every kind of line that a piece can have, and the legend. */
  private static Drawing piece() {
    Pattern pattern = Pattern.of("Doll vest", List.of(front(0)), List.of());
    CutPiece front = CutPlan.of(pattern).pieces().get(0);
    Finding finding =
        Finding.warning("shoulder.short", Place.edge("front", "shoulder"), "shorter than the back");
    Group drawn =
        PieceDrawing.of(front)
            .withGarment("Doll vest")
            .withFabric("jersey")
            .withFindings(List.of(finding))
            .group();
    return DraftDrawing.withLegend(Drawing.of("Doll vest", drawn));
  }

  private static Piece front(double wider) {
    Point hemSide = new Point(90 + wider, 0);
    Point underarm = new Point(90 + wider, 90);
    Point tip = new Point(65 + wider / 2, 150 + wider);
    Point neck = new Point(32, 160 + wider);
    Point centre = new Point(0, 120 + wider / 2);
    Point hemCentre = new Point(0, 0);
    Curve armhole = Curve.of(new Cubic(underarm, new Point(75, 92), new Point(56, 120), tip));
    Curve neckline = Curve.of(new Cubic(neck, new Point(30, 135), new Point(20, 120), centre));
    SeamFinish seam = SeamFinish.of(Length.mm(7));
    return Piece.of(
            "front",
            List.of(
                Edge.of("hem", Curve.line(hemCentre, hemSide))
                    .withFinish(TurnedHem.once(Length.mm(12))),
                Edge.of("side", Curve.line(hemSide, underarm)).withFinish(seam),
                Edge.of("armhole", armhole).withFinish(seam),
                Edge.of("shoulder", Curve.line(tip, neck)).withFinish(seam),
                Edge.of("neck", neckline).withFinish(FoldedBand.of(Length.mm(13), Length.mm(7))),
                Edge.onFold(Curve.line(centre, hemCentre))))
        .withCutting(Cutting.onFold(1))
        .withGrain(Angle.degrees(90))
        .withNotch(Notch.of("side", Length.mm(45), "waist"))
        .withMarking(MarkingLine.of("pocket", Curve.line(new Point(50, 70), new Point(80, 75))));
  }

  private static Drawing sizes() {
    Map<String, Pattern> run = new LinkedHashMap<>();
    for (int i = 0; i < 4; i++) {
      run.put("size " + (i + 1), Pattern.of("vest", List.of(front(6 * i)), List.of()));
    }
    return NestedDrawing.of("Doll vest", run);
  }

  /** Strips of several widths on a remnant. */
  private static Drawing strips() {
    Lay lay =
        Lay.on(Cloth.of(Length.cm(70)))
            .withStrip("neck band", Length.cm(48), Length.mm(40))
            .withStrip("hem band", Length.cm(62), Length.mm(90))
            .withStrip("waistband", Length.cm(66), Length.mm(160));
    return LayDrawing.of("Doll vest", lay.plan(1, 3));
  }

  @Test
  void aPieceWithEveryKindOfLine() throws IOException {
    assertLooksAs("piece", piece());
  }

  @Test
  void sizesInOneAnother() throws IOException {
    assertLooksAs("sizes", sizes());
  }

  @Test
  void stripsOnTheirCloth() throws IOException {
    assertLooksAs("strips", strips());
  }

  /** A drawing without one of its elements, or with one a fifth of a millimetre off. */
  @Test
  void whatIsMissingOrMovedIsNoticed() throws IOException {
    Drawing whole = piece();
    BufferedImage picture = decoded(bytes(whole));
    assertEquals("", difference(picture, decoded(bytes(whole))));
    List<Element> elements = whole.groups().get(0).elements();
    Transform aside = Transform.translation(new Vector(0.2, 0.2));
    for (int i = 0; i < elements.size(); i++) {
      List<Element> moved = new ArrayList<>(elements);
      moved.set(i, elements.get(i).map(aside));
      List<Element> left = new ArrayList<>(elements);
      left.remove(i);
      for (List<Element> changed : List.of(moved, left)) {
        Group front = new Group("front", changed);
        Drawing other = Drawing.of(whole.title(), front, whole.groups().get(1));
        assertNotEquals("", difference(picture, decoded(bytes(other))), "" + elements.get(i));
      }
    }
  }

  private static void assertLooksAs(String name, Drawing drawing) throws IOException {
    byte[] file = bytes(drawing);
    String said = difference(reference(name), decoded(file));
    Path now = Path.of("target", "pictures", name + ".png");
    if (!said.isEmpty()) {
      Files.createDirectories(now.getParent());
      Files.write(now, file);
    }
    assertEquals(
        "",
        said,
        () ->
            "The drawing no longer looks as its picture. Look at "
                + now.toAbsolutePath()
                + "; if it is meant so, put it in the place of src/test/resources/"
                + ReferencePicturesTest.class.getPackageName().replace('.', '/')
                + "/"
                + name
                + ".png.");
  }

  private static BufferedImage reference(String name) throws IOException {
    try (InputStream in = ReferencePicturesTest.class.getResourceAsStream(name + ".png")) {
      return in == null
          ? new BufferedImage(1, 1, BufferedImage.TYPE_3BYTE_BGR)
          : Objects.requireNonNull(ImageIO.read(in), name);
    }
  }

  private static byte[] bytes(Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PngFormat.of().write(drawing, out);
    return out.toByteArray();
  }

  private static BufferedImage decoded(byte[] file) throws IOException {
    return Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(file)));
  }

  /** Where two pictures differ first and in how many pixels; empty if they look the same. */
  private static String difference(BufferedImage one, BufferedImage other) {
    if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
      return size(one) + " and " + size(other);
    }
    int count = 0;
    String first = "";
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        if (one.getRGB(x, y) != other.getRGB(x, y)) {
          first = count == 0 ? "from pixel " + x + ", " + y : first;
          count++;
        }
      }
    }
    return count == 0 ? "" : count + " pixels, " + first;
  }

  private static String size(BufferedImage image) {
    return image.getWidth() + " x " + image.getHeight();
  }
}
