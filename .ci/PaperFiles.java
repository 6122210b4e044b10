import dev.drafting.core.measure.Length;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.ProjectorPdf;
import dev.drafting.export.pdf.TiledPdf;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.nio.file.Path;

/**
 * Writes the first make of a garment on every other paper, for the projector, and as pictures.
 *
 * <p>Usage: java -cp LIBRARY PaperFiles.java GARMENT-FOLDER FOLDER
 */
public final class PaperFiles {
  public static void main(String[] args) throws Exception {
    Draft draft = GarmentFolder.read(Path.of(args[0])).makes().values().iterator().next();
    Export.of(draft)
        .pdf(Paper.A3)
        .format(TiledPdf.on(Paper.LEGAL).withButtJoints())
        .wide(Paper.A0)
        .roll(Length.inches(36))
        .projector(ProjectorPdf.of())
        .projector(ProjectorPdf.of().onDark().mirrored())
        .sheet(Paper.A4)
        .sheet(Paper.LETTER)
        .gauge(Paper.A4)
        .png()
        .to(Path.of(args[1]), Progress.none());
  }
}
