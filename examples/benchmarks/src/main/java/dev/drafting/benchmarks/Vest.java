package dev.drafting.benchmarks;

import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.nio.file.Path;

/** The demo garment, as seen from the top of the project where the command is given. */
final class Vest {
  static final Path FOLDER = Path.of("examples/programs/garments/vest").toAbsolutePath();

  private Vest() {}

  static Garment read() {
    return GarmentFolder.read(FOLDER);
  }

  /** The first of its makes. */
  static Draft draft() {
    return read().makes().values().iterator().next();
  }
}
