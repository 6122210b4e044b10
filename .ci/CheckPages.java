import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;

/**
 * Measures printed pages as an outside reader (poppler) shows them: the test squares of page 1, and
 * the sheets of every piece, joined, against the cut line that was drafted.
 *
 * <p>Usage: java -cp LIBRARY CheckPages.java GARMENT-FOLDER NUMBER-OF-THE-MAKE PDF...
 */
public final class CheckPages {
  private static final double MARGIN = 10;
  private static final double OVERLAP = 10;
  private static final double TOLERANCE = 0.1;

  public static void main(String[] args) throws Exception {
    Garment garment = GarmentFolder.read(Path.of(args[0]));
    Draft draft = List.copyOf(garment.makes().values()).get(Integer.parseInt(args[1]));
    for (String pdf : List.of(args).subList(2, args.length)) {
      Path pages = Files.createTempDirectory("pages");
      new CheckPages(pdf, pages).check(draft);
    }
  }

  private final String pdf;
  private final Path folder;

  private CheckPages(String pdf, Path folder) {
    this.pdf = pdf;
    this.folder = folder;
  }

  private void check(Draft draft) throws Exception {
    List<String> texts = texts();
    require(
        texts.get(texts.size() - 1).contains("sheet " + texts.size() + " of " + texts.size()),
        "the last sheet does not say that it is sheet " + texts.size() + " of as many");
    squares();
    for (CutPiece piece : draft.cutPieces()) {
      joined(piece, texts);
    }
  }

  private List<String> texts() throws Exception {
    Path text = folder.resolve("pages.txt");
    run("pdftotext", "-layout", pdf, text.toString());
    String all = Files.readString(text, StandardCharsets.UTF_8);
    return List.of(all.split("\f"));
  }

  // ---- the squares of page 1 ----

  private void squares() throws Exception {
    BufferedImage page = render(1, 600);
    double[] upright = sides(page, false);
    double[] level = sides(page, true);
    double[] wanted = {100, 101.6};
    for (int i = 0; i < 2; i++) {
      say("square of %.1f mm: %.3f mm wide, %.3f mm high", wanted[i], upright[i], level[i]);
      require(Math.abs(upright[i] - wanted[i]) <= TOLERANCE, "the square is not true across");
      require(Math.abs(level[i] - wanted[i]) <= TOLERANCE, "the square is not true upwards");
    }
  }

  /** The distances between the parallel sides of the two squares, the smaller first. */
  private static double[] sides(BufferedImage page, boolean turned) {
    double mm = 600 / 25.4;
    int across = turned ? page.getHeight() : page.getWidth();
    int along = turned ? page.getWidth() : page.getHeight();
    Map<Integer, List<double[]>> bySpan = new TreeMap<>();
    for (int i = 0; i < across; i++) {
      int start = -1;
      for (int j = 0; j <= along; j++) {
        boolean dark = j < along && (turned ? grey(page, j, i) : grey(page, i, j)) < 128;
        if (dark && start < 0) {
          start = j;
        } else if (!dark && start >= 0) {
          if (j - start > 97 * mm && j - start < 104 * mm) {
            int key = (int) Math.round((start + j) / 2 / mm / 3);
            bySpan.computeIfAbsent(key, k -> new ArrayList<>()).add(new double[] {i, j - start});
          }
          start = -1;
        }
      }
    }
    return bySpan.values().stream()
        .mapToDouble(lines -> between(lines, mm))
        .sorted()
        .toArray();
  }

  private static double between(List<double[]> lines, double mm) {
    double middle = lines.stream().mapToDouble(l -> l[0]).average().orElseThrow();
    double low = lines.stream().mapToDouble(l -> l[0]).filter(x -> x < middle).average().orElseThrow();
    double high = lines.stream().mapToDouble(l -> l[0]).filter(x -> x > middle).average().orElseThrow();
    return (high - low) / mm;
  }

  // ---- the sheets of a piece, joined ----

  private static final int DPI = 254;
  private static final double MORE_INK = 1.05;
  private static final double PX = DPI / 25.4;

  private void joined(CutPiece piece, List<String> texts) throws Exception {
    Sheet[] sheets = sheetsOf(piece.name(), texts);
    require(sheets.length > 0, "no sheet of " + piece.name());
    Joined paper = join(sheets);
    List<Sample> samples = samples(piece);
    double[] shift = paper.place(samples);
    Fit fit = paper.measure(samples, shift);
    Length edge =
        piece.piece().edges().stream()
            .map(e -> e.curve().length())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    double off = edge.toMm() * fit.stretch;
    say(
        "%s on %d sheets: %d places of the cut line, %d of them beside other lines, of the rest 99 in 100 within %.3f mm; an edge of %.2f mm is off by %.3f mm",
        piece.name(), sheets.length, samples.size(), fit.crossed, fit.nearly, edge.toMm(), off);
    require(fit.missing <= samples.size() / 500, fit.missing + " places are not on the paper");
    require(fit.crossed <= samples.size() / 20, fit.crossed + " places have other lines beside them");
    require(fit.nearly <= TOLERANCE, "the joined sheets do not follow the cut line");
    require(Math.abs(off) <= TOLERANCE, "the longest edge is not true");
  }

  private record Sheet(int page, int row, int column) {}

  private static Sheet[] sheetsOf(String piece, List<String> texts) {
    Pattern title = Pattern.compile("(?m)(?:^|\\s{2})" + Pattern.quote(piece) + "\\s+([A-Z])(\\d+)\\b");
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Matcher matcher = title.matcher(texts.get(i));
      if (texts.get(i).contains("sheet " + (i + 1) + " of ") && matcher.find()) {
        int row = matcher.group(1).charAt(0) - 'A';
        sheets.add(new Sheet(i + 1, row, Integer.parseInt(matcher.group(2)) - 1));
      }
    }
    return sheets.toArray(Sheet[]::new);
  }

  private Joined join(Sheet[] sheets) throws Exception {
    List<BufferedImage> images = new ArrayList<>();
    for (Sheet sheet : sheets) {
      images.add(render(sheet.page, DPI));
    }
    double[] size = size(sheets[0].page);
    double wide = size[0] - 2 * MARGIN;
    double tall = size[1] - 2 * MARGIN;
    int columns = 1 + Arrays.stream(sheets).mapToInt(Sheet::column).max().orElseThrow();
    int rows = 1 + Arrays.stream(sheets).mapToInt(Sheet::row).max().orElseThrow();
    Joined joined =
        new Joined(columns * (wide - OVERLAP) + OVERLAP, rows * (tall - OVERLAP) + OVERLAP);
    for (int i = 0; i < sheets.length; i++) {
      joined.lay(
          images.get(i),
          sheets[i].column * (wide - OVERLAP),
          sheets[i].row * (tall - OVERLAP),
          wide,
          tall);
    }
    return joined;
  }

  private record Sample(double x, double y, double nx, double ny) {}

  /** Places on the cut line every millimetre, y downwards; the fold of the cloth is not cut. */
  private static List<Sample> samples(CutPiece piece) {
    Curve line = piece.cutLine();
    List<Sample> samples = new ArrayList<>();
    for (double at = 0.5; at < line.length().toMm(); at += 1) {
      Point point = line.pointAt(Length.mm(at));
      Vector normal = line.directionAt(Length.mm(at)).left();
      if (!(piece.piece().isOnFold() && Math.abs(point.x()) < 1e-6)) {
        samples.add(new Sample(point.x(), -point.y(), normal.dx(), -normal.dy()));
      }
    }
    return samples;
  }

  private static final class Fit {
    int missing;
    int crossed;
    double nearly;
    double stretch;
  }

  /** The paper as it lies when all sheets are taped, one byte of darkness a pixel. */
  private static final class Joined {
    private final int width;
    private final int height;
    private final byte[] dark;

    Joined(double widthMm, double heightMm) {
      width = (int) Math.ceil(widthMm * PX) + 1;
      height = (int) Math.ceil(heightMm * PX) + 1;
      dark = new byte[width * height];
    }

    void lay(BufferedImage sheet, double left, double top, double wide, double tall) {
      int x0 = (int) Math.round(left * PX);
      int y0 = (int) Math.round(top * PX);
      int margin = (int) Math.round(MARGIN * PX);
      for (int y = 0; y < tall * PX - 1; y++) {
        for (int x = 0; x < wide * PX - 1; x++) {
          int value = 255 - grey(sheet, margin + x, margin + y);
          int at = (y0 + y) * width + x0 + x;
          dark[at] = (byte) Math.max(value, dark[at] & 0xff);
        }
      }
    }

    /** The shift from the draft to the paper under which the cut line is found, in mm. */
    double[] place(List<Sample> samples) {
      double minX = samples.stream().mapToDouble(Sample::x).min().orElseThrow();
      double maxX = samples.stream().mapToDouble(Sample::x).max().orElseThrow();
      double minY = samples.stream().mapToDouble(Sample::y).min().orElseThrow();
      double maxY = samples.stream().mapToDouble(Sample::y).max().orElseThrow();
      double[] best = {0, 0, Double.MAX_VALUE};
      for (double dx = -minX; dx <= width / PX - maxX; dx += 0.4) {
        for (double dy = -minY; dy <= height / PX - maxY; dy += 0.4) {
          tryShift(samples, dx, dy, 7, best);
        }
      }
      double[] coarse = best.clone();
      best[2] = Double.MAX_VALUE;
      for (double dx = -0.8; dx <= 0.8; dx += 0.1) {
        for (double dy = -0.8; dy <= 0.8; dy += 0.1) {
          tryShift(samples, coarse[0] + dx, coarse[1] + dy, 1, best);
        }
      }
      return best;
    }

    private void tryShift(List<Sample> samples, double dx, double dy, int step, double[] best) {
      double light = 0;
      for (int i = 0; i < samples.size() && light < best[2]; i += step) {
        light += 255 - at(samples.get(i).x + dx, samples.get(i).y + dy);
      }
      if (light < best[2]) {
        best[0] = dx;
        best[1] = dy;
        best[2] = light;
      }
    }

    /** Where the middle of the printed line lies, on the normal of every place. */
    Fit measure(List<Sample> samples, double[] shift) {
      Fit fit = new Fit();
      List<double[]> found = new ArrayList<>();
      List<Double> inks = new ArrayList<>();
      for (Sample s : samples) {
        double sum = 0;
        double moment = 0;
        for (double t = -0.7; t <= 0.7; t += 0.02) {
          double d = at(s.x + shift[0] + t * s.nx, s.y + shift[1] + t * s.ny);
          sum += d;
          moment += d * t;
        }
        if (sum * 0.02 < 0.3 * 255) {
          fit.missing++;
        } else {
          found.add(new double[] {s.nx, s.ny, s.x * s.nx + s.y * s.ny, moment / sum, sum});
          inks.add(sum);
        }
      }
      // where a sheet's border, a mark or another line lies beside the cut line there is more ink
      // than the cut line's own, and its middle cannot be told
      double own = inks.stream().sorted().skip(inks.size() / 2).findFirst().orElseThrow();
      int all = found.size();
      found.removeIf(r -> r[4] > MORE_INK * own);
      fit.crossed = all - found.size();
      fit.stretch = solve(found, 3)[2];
      double[] laid = solve(found, 2);
      double[] left =
          found.stream()
              .mapToDouble(r -> Math.abs(r[3] - laid[0] * r[0] - laid[1] * r[1]))
              .sorted()
              .toArray();
      fit.nearly = left[(int) (left.length * 0.99)];
      return fit;
    }

    /** Least squares for the first n columns; a place where something crosses the line has no say. */
    private static double[] solve(List<double[]> rows, int n) {
      double[] x = new double[n];
      for (double trust : new double[] {0.5, 0.15, 0.15}) {
        double[][] a = new double[n][n + 1];
        for (double[] r : rows) {
          double left = r[3];
          for (int i = 0; i < n; i++) {
            left -= x[i] * r[i];
          }
          for (int i = 0; i < n && Math.abs(left) < trust; i++) {
            for (int j = 0; j < n; j++) {
              a[i][j] += r[i] * r[j];
            }
            a[i][n] += r[i] * r[3];
          }
        }
        x = solved(a);
      }
      return x;
    }

    private static double[] solved(double[][] a) {
      int n = a.length;
      for (int i = 0; i < n; i++) {
        for (int k = i + 1; k < n; k++) {
          double factor = a[k][i] / a[i][i];
          for (int j = i; j <= n; j++) {
            a[k][j] -= factor * a[i][j];
          }
        }
      }
      double[] x = new double[n];
      for (int i = n - 1; i >= 0; i--) {
        double sum = a[i][n];
        for (int j = i + 1; j < n; j++) {
          sum -= a[i][j] * x[j];
        }
        x[i] = sum / a[i][i];
      }
      return x;
    }

    /** Darkness at a place in mm, interpolated between the middles of pixels. */
    private double at(double x, double y) {
      double px = x * PX - 0.5;
      double py = y * PX - 0.5;
      int ix = (int) Math.floor(px);
      int iy = (int) Math.floor(py);
      if (ix < 0 || iy < 0 || ix >= width - 1 || iy >= height - 1) {
        return 0;
      }
      double fx = px - ix;
      double fy = py - iy;
      int i = iy * width + ix;
      double upper = (dark[i] & 0xff) * (1 - fx) + (dark[i + 1] & 0xff) * fx;
      double lower = (dark[i + width] & 0xff) * (1 - fx) + (dark[i + width + 1] & 0xff) * fx;
      return upper * (1 - fy) + lower * fy;
    }
  }

  // ---- outside programs ----

  private BufferedImage render(int page, int dpi) throws Exception {
    String name = folder.resolve("p" + page + "-" + dpi).toString();
    String number = Integer.toString(page);
    run("pdftoppm", "-gray", "-png", "-singlefile", "-r", Integer.toString(dpi), "-f", number, "-l", number, pdf, name);
    BufferedImage image = ImageIO.read(new File(name + ".png"));
    Files.delete(Path.of(name + ".png"));
    return image;
  }

  /** Width and height of a page in mm. */
  private double[] size(int page) throws Exception {
    Process info =
        new ProcessBuilder("pdfinfo", "-f", Integer.toString(page), "-l", Integer.toString(page), pdf)
            .start();
    String text = new String(info.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    Matcher matcher = Pattern.compile("size: +([\\d.]+) x ([\\d.]+) pts").matcher(text);
    require(matcher.find(), "page " + page + " has no size");
    return new double[] {
      Double.parseDouble(matcher.group(1)) * 25.4 / 72, Double.parseDouble(matcher.group(2)) * 25.4 / 72
    };
  }

  private static int grey(BufferedImage image, int x, int y) {
    return image.getRaster().getSample(x, y, 0);
  }

  private static void run(String... command) throws IOException, InterruptedException {
    int code = new ProcessBuilder(command).inheritIO().start().waitFor();
    if (code != 0) {
      throw new IllegalStateException(String.join(" ", command) + " ended with " + code);
    }
  }

  private void say(String format, Object... values) {
    System.out.println(Path.of(pdf).getFileName() + ": " + String.format(Locale.ROOT, format, values));
  }

  private void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(pdf + ": " + otherwise);
    }
  }
}
