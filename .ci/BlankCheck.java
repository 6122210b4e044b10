import java.awt.image.BufferedImage;
import java.io.File;
import javax.imageio.ImageIO;

/** Fails unless a picture shows something: java BlankCheck.java PICTURE... */
public final class BlankCheck {
  public static void main(String[] args) throws Exception {
    for (String name : args) {
      BufferedImage image = ImageIO.read(new File(name));
      int dark = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          int rgb = image.getRGB(x, y);
          if (((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3 < 160) {
            dark++;
          }
        }
      }
      double share = dark / (double) (image.getWidth() * image.getHeight());
      System.out.printf(java.util.Locale.ROOT, "%s: %d x %d, %.2f %% dark%n", name, image.getWidth(), image.getHeight(), 100 * share);
      if (share < 0.001) {
        throw new AssertionError(name + " is blank");
      }
    }
  }
}
