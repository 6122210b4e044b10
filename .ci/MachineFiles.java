import dev.drafting.core.measure.Length;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.dxf.DxfFormat;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes the files for machines of the first make of a garment, and what is in them: the length of
 * the lines of each layer, in mm.
 *
 * <p>Usage: java -cp LIBRARY MachineFiles.java GARMENT-FOLDER FOLDER
 */
public final class MachineFiles {
  public static void main(String[] args) throws Exception {
    Draft draft = GarmentFolder.read(Path.of(args[0])).makes().values().iterator().next();
    Path folder = Path.of(args[1]);
    Export.of(draft).dxf().pieces().hpgl().to(folder, Progress.none());
    Drawing drawing = DraftDrawing.of(draft);
    try (OutputStream out = Files.newOutputStream(folder.resolve("polylines.dxf"))) {
      DxfFormat.withPolylines(Length.mm(0.01)).write(drawing, out);
    }
    Map<String, Double> lengths = new TreeMap<>();
    drawing.groups().stream()
        .flatMap(group -> group.elements().stream())
        .filter(Stroke.class::isInstance)
        .map(Stroke.class::cast)
        .forEach(
            stroke ->
                lengths.merge(
                    stroke.style().toString().toUpperCase(Locale.ROOT).replace(' ', '_'),
                    stroke.curve().length().toMm(),
                    Double::sum));
    StringBuilder text = new StringBuilder();
    lengths.forEach((layer, length) -> text.append(layer + " " + length + "\n"));
    draft.cutPieces()
        .forEach(
            piece ->
                text.append("block:" + piece.name() + " " + piece.cutLine().length().toMm() + "\n"));
    Files.writeString(folder.resolve("lengths.txt"), text);
  }
}
