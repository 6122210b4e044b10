package dev.drafting.examples.damage;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A garment folder in which one file comes from anybody. */
final class GarmentDoor implements Door {
  /** The files of a garment folder. */
  static final List<String> FILES =
      List.of(GarmentFolder.DESCRIPTION, GarmentFolder.TRACING, GarmentFolder.DRAWING);

  private final Path folder;
  private final String file;
  private final String sound;

  private GarmentDoor(Path folder, String file, String sound) {
    this.folder = folder;
    this.file = file;
    this.sound = sound;
  }

  /** Copies a sound garment to an empty folder; for a drawing, its points are drawn. */
  static GarmentDoor of(Path sound, Path folder, String file) throws IOException {
    String description = described(Files.readString(sound.resolve(GarmentFolder.DESCRIPTION)));
    String tracing = traced(Files.readString(sound.resolve(GarmentFolder.TRACING)));
    Files.writeString(folder.resolve(GarmentFolder.DESCRIPTION), description);
    boolean drawn = file.equals(GarmentFolder.DRAWING);
    String outlines = drawn ? drawing(tracing) : tracing;
    Path drawnOrTraced = folder.resolve(drawn ? GarmentFolder.DRAWING : GarmentFolder.TRACING);
    Files.writeString(drawnOrTraced, outlines);
    String text = file.equals(GarmentFolder.DESCRIPTION) ? description : outlines;
    return new GarmentDoor(folder, file, text);
  }

  /** Beside what it says already: a sheet beside the pieces, and the front traced again. */
  private static String described(String description) {
    return description
        .replace(
            "\"pieces\": [",
            "\"sheet\": {\"width\": \"21 cm\", \"height\": \"297 mm\"}, \"pieces\": [")
        .replace("\"name\": \"front\",", "\"name\": \"front\", \"again\": [\"front 2\"],");
  }

  private static String traced(String tracing) {
    StringBuilder more = new StringBuilder(tracing);
    tracing
        .lines()
        .filter(line -> line.startsWith("front,"))
        .forEach(line -> more.append(line.replace("front,", "front 2,")).append('\n'));
    return more.append("sheet,,0,0\nsheet,,21,0\nsheet,,21,29.7\nsheet,,0,29.7\n").toString();
  }

  /** A path for every stroke, a unit to the centimetre, y downwards. */
  static String drawing(String tracing) {
    StringBuilder svg =
        new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='1cm' viewBox='0 0 1 1'>");
    Map<String, Integer> strokes = new HashMap<>();
    String before = "";
    for (String line : tracing.lines().skip(1).toList()) {
      String[] cells = line.split(",", -1);
      String edge = cells[1].isEmpty() ? "" : "." + cells[1];
      String id = (cells[0] + edge).replace(' ', '_');
      if (!id.equals(before)) {
        int times = strokes.merge(id, 1, Integer::sum);
        svg.append(before.isEmpty() ? "\n" : "'/>\n").append("<path id='").append(id);
        svg.append(times == 1 ? "" : "." + times).append("' d='M");
      }
      double down = -Double.parseDouble(cells[3]);
      svg.append(id.equals(before) ? " L" : "").append(cells[2]).append(' ').append(down);
      before = id;
    }
    return svg.append("'/>\n</svg>\n").toString();
  }

  @Override
  public String name() {
    return file;
  }

  @Override
  public byte[] sound() {
    return sound.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public byte[] damaged(long seed) {
    return new Mutations(seed).damage(sound);
  }

  @Override
  public boolean takes(byte[] sent) throws IOException {
    Files.write(folder.resolve(file), sent);
    try {
      for (Draft draft : GarmentFolder.read(folder).makes().values()) {
        for (Finding finding : draft.findings()) {
          Door.require(!finding.reason().isBlank(), "a finding without a reason");
        }
        Door.require(draft.goods().size() > 0, "nothing to buy");
      }
      return true;
    } catch (DraftingException e) {
      Door.requireHelpful(e);
      return false;
    }
  }
}
