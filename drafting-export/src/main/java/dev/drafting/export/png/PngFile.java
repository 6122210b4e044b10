package dev.drafting.export.png;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Pixels as a PNG file with its resolution and no clock. */
final class PngFile {
  private static final String METADATA = "javax_imageio_png_1.0";
  private static final double INCHES_PER_METRE = 1000 / 25.4;

  private PngFile() {}

  static void write(BufferedImage image, int dotsPerInch, OutputStream out) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(
              new ImageTypeSpecifier(image), writer.getDefaultWriteParam());
      metadata.mergeTree(METADATA, resolution(dotsPerInch));
      writer.setOutput(stream);
      writer.write(new IIOImage(image, null, metadata));
    } finally {
      writer.dispose();
    }
  }

  private static IIOMetadataNode resolution(int dotsPerInch) {
    String perMetre = Long.toString(Math.round(dotsPerInch * INCHES_PER_METRE));
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    size.setAttribute("pixelsPerUnitXAxis", perMetre);
    size.setAttribute("pixelsPerUnitYAxis", perMetre);
    size.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode(METADATA);
    root.appendChild(size);
    return root;
  }
}
