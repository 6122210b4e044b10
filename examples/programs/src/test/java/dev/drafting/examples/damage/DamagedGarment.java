package dev.drafting.examples.damage;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A garment folder in which one file is damaged, again and again. */
public final class DamagedGarment {
  /** The files of a garment folder. */
  public static final List<String> FILES =
      List.of(GarmentFolder.DESCRIPTION, GarmentFolder.TRACING, GarmentFolder.DRAWING);

  private final Path folder;
  private final Path damaged;
  private final String text;

  private DamagedGarment(Path folder, Path damaged, String text) {
    this.folder = folder;
    this.damaged = damaged;
    this.text = text;
  }

  /**
   * Copies a sound garment.
   *
   * @param sound a folder with traced points; if the drawing is to be damaged, the points are drawn
   * @param folder an empty folder, where the copy goes
   * @param file one of {@link #FILES}
   * @return the copy, nothing damaged yet
   * @throws IOException if it cannot be copied
   */
  public static DamagedGarment of(Path sound, Path folder, String file) throws IOException {
    String description = Files.readString(sound.resolve(GarmentFolder.DESCRIPTION));
    String tracing = Files.readString(sound.resolve(GarmentFolder.TRACING));
    Files.writeString(folder.resolve(GarmentFolder.DESCRIPTION), description);
    boolean drawn = file.equals(GarmentFolder.DRAWING);
    String outlines = drawn ? drawing(tracing) : tracing;
    Path drawnOrTraced = folder.resolve(drawn ? GarmentFolder.DRAWING : GarmentFolder.TRACING);
    Files.writeString(drawnOrTraced, outlines);
    String text = file.equals(GarmentFolder.DESCRIPTION) ? description : outlines;
    return new DamagedGarment(folder, folder.resolve(file), text);
  }

  /** A path for every stroke, a unit to the centimetre, y downwards. */
  private static String drawing(String tracing) {
    StringBuilder svg =
        new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='1cm' viewBox='0 0 1 1'>");
    Map<String, Integer> strokes = new HashMap<>();
    String before = "";
    for (String line : tracing.lines().skip(1).toList()) {
      String[] cells = line.split(",", -1);
      String id = (cells[0] + "." + cells[1]).replace(' ', '_');
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

  /**
   * Damages the file and drafts what is left of the garment.
   *
   * @param seed says how it is damaged
   * @return whether it is still a garment; else it was refused with what is wrong and what would be
   *     accepted
   * @throws IOException if the damaged file cannot be written
   */
  public boolean isDrafted(long seed) throws IOException {
    Files.write(damaged, new Mutations(seed).damage(text));
    return isDrafted();
  }

  /**
   * Drafts the garment as it is now.
   *
   * @return whether it is still a garment
   */
  public boolean isDrafted() {
    try {
      for (Draft draft : GarmentFolder.read(folder).makes().values()) {
        for (Finding finding : draft.findings()) {
          require(!finding.reason().isBlank(), "a finding without a reason");
        }
        require(draft.goods().size() > 0, "nothing to buy");
      }
      return true;
    } catch (DraftingException e) {
      require(!e.what().isEmpty() && !e.accepted().isEmpty(), "a refusal that does not help");
      return false;
    }
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(otherwise);
    }
  }
}
