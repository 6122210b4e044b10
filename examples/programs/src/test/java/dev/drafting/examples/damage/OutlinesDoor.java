package dev.drafting.examples.damage;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.trace.UnnamedTracing;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.dxf.PieceFile;
import dev.drafting.export.source.CutOutlines;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The cut outlines of a pattern, as a drawing or as a file of pieces. */
final class OutlinesDoor implements Door {
  private final Path file;
  private final String sound;

  private OutlinesDoor(Path file, ByteArrayOutputStream sound) {
    this.file = file;
    this.sound = sound.toString(StandardCharsets.UTF_8);
  }

  private static Draft draft(Path garment) {
    return GarmentFolder.read(garment).makes().values().iterator().next();
  }

  static OutlinesDoor drawing(Path garment, Path folder) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgFormat.of().write(DraftDrawing.of(draft(garment)), out);
    return new OutlinesDoor(folder.resolve("cut.svg"), out);
  }

  static OutlinesDoor pieces(Path garment, Path folder) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PieceFile.of(draft(garment)).write(out);
    return new OutlinesDoor(folder.resolve("cut.dxf"), out);
  }

  @Override
  public String name() {
    return String.valueOf(file.getFileName());
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
    Files.write(file, sent);
    try {
      for (UnnamedTracing piece : CutOutlines.read(file)) {
        Door.require(!piece.piece().isBlank(), "a piece without a name");
      }
      return true;
    } catch (DraftingException e) {
      Door.requireHelpful(e);
      return false;
    }
  }
}
