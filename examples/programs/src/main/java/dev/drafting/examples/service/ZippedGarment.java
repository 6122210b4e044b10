package dev.drafting.examples.service;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

/**
 * A garment folder that was sent as a zip. Only the files of a garment folder are unpacked, under
 * names of our own, into a folder of their own that is deleted afterwards; what they may grow to is
 * bounded, whatever the zip says.
 */
final class ZippedGarment {
  private static final List<String> FILES =
      List.of(GarmentFolder.TRACING, GarmentFolder.DRAWING, GarmentFolder.DESCRIPTION);
  private static final int MOST_ENTRIES = 3;
  private static final int LARGEST_FILE = 4_000_000;

  private ZippedGarment() {}

  /**
   * Reads the garment.
   *
   * @param zip the bytes as they come
   * @throws DraftingException if it is no zip, holds other files, grows too large, or cannot be
   *     drafted
   */
  static Garment read(InputStream zip) throws IOException {
    Path folder = Files.createTempDirectory("garment-");
    try {
      unpack(zip, folder);
      return GarmentFolder.read(folder);
    } finally {
      delete(folder);
    }
  }

  private static void unpack(InputStream zip, Path folder) throws IOException {
    int count = 0;
    try (ZipInputStream entries = new ZipInputStream(zip)) {
      for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
        if (!FILES.contains(entry.getName()) || ++count > MOST_ENTRIES) {
          throw DraftingException.of("the zip holds something else")
              .value(entry.getName())
              .accepted(String.join(", ", FILES) + ", each once and not in a folder");
        }
        write(entries, folder.resolve(entry.getName()));
      }
    } catch (ZipException | EOFException | IllegalArgumentException e) {
      throw DraftingException.of("the zip is damaged")
          .accepted("a zip with " + GarmentFolder.DESCRIPTION + " and a tracing")
          .because(e);
    }
    if (count == 0) {
      throw DraftingException.of("this is no zip, or an empty one")
          .accepted("a zip with " + GarmentFolder.DESCRIPTION + " and a tracing");
    }
  }

  private static void write(ZipInputStream entry, Path file) throws IOException {
    byte[] bytes = entry.readNBytes(LARGEST_FILE + 1);
    if (bytes.length > LARGEST_FILE) {
      throw DraftingException.of("the file is too large")
          .at(String.valueOf(file.getFileName()))
          .accepted(String.format(Locale.ROOT, "%,d bytes at most", LARGEST_FILE));
    }
    Files.write(file, bytes);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
