package dev.drafting.export.source;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.UnnamedTracing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Reads paper back into tracings: the cut lines of the pieces in a drawing (SVG) or a file of
 * pieces (DXF in the style of ASTM D6673) that this library wrote. The corners are found anew; name
 * the stretches between them, say with {@code Truing.withTracedOutside} what was added at each
 * edge, and the pattern is there again. A draft that was stored is read back whole, see {@code
 * dev.drafting.export.store.StoredDraft}.
 *
 * <pre>{@code
 * Draft vest = GarmentFolder.read(Path.of("examples/programs/garments/vest")).make("B interlock");
 * List<WrittenFile> files = Export.of(vest).pieces().to(Path.of("target/pieces"), Progress.none());
 * CutOutlines.read(files.get(0).path()).get(0).stretches().size();  // => 6
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class CutOutlines {
  /** How far the ends of a fold may be off the line through them that is upright. */
  private static final double UPRIGHT_MM = 0.001;

  /** Chords of a curve turn less from one to the next. */
  private static final double SHARP_DEGREES = 15;

  private static final int MOST_CORNERS = 200;

  private CutOutlines() {}

  /**
   * Reads all pieces of a file.
   *
   * @param file a drawing whose name ends in {@code .svg}, or a file of pieces that ends in {@code
   *     .dxf}
   * @return a tracing of each cut line, in the order of the file: half on the fold where it has a
   *     fold, else as it lies
   * @throws DraftingException if the file cannot be read, has no pieces, or a piece has no corner
   */
  public static List<UnnamedTracing> read(Path file) {
    String name = StrictText.name(file).toLowerCase(Locale.ROOT);
    if (name.endsWith(".svg")) {
      return tracings(SvgFile.read(file, new DrawnCutLines()));
    }
    if (name.endsWith(".dxf")) {
      return tracings(DxfPieces.read(file));
    }
    throw DraftingException.of("this is no drawing and no file of pieces")
        .value(StrictText.name(file))
        .accepted("a name that ends in .svg or .dxf");
  }

  private static List<UnnamedTracing> tracings(List<Stroke> strokes) {
    Map<String, List<Stroke>> pieces = new LinkedHashMap<>();
    for (Stroke stroke : strokes) {
      pieces.computeIfAbsent(stroke.piece(), piece -> new ArrayList<>()).add(stroke);
    }
    List<UnnamedTracing> tracings = new ArrayList<>();
    pieces.forEach((piece, lines) -> tracings.add(tracing(piece, lines)));
    return List.copyOf(tracings);
  }

  private static UnnamedTracing tracing(String piece, List<Stroke> lines) {
    List<Polyline> cut = lines(lines, DrawnCutLines.CUT_LINE);
    List<Polyline> folds = lines(lines, DrawnCutLines.FOLD);
    if (cut.size() != 1 || folds.size() > 1) {
      throw DraftingException.of("a piece has several cut lines or folds, or none")
          .at(lines.get(0).where() + ", " + piece)
          .value(cut.size() + " cut lines, " + folds.size() + " folds")
          .accepted("one cut line, one fold at most");
    }
    boolean isHalf = !folds.isEmpty();
    double fold = isHalf ? fold(piece, folds.get(0)) : 0;
    Polyline line = cut.get(0).map(Transform.translation(new Vector(-fold, 0)));
    return UnnamedTracing.of(
        piece,
        isHalf ? Extent.HALF_ON_FOLD : Extent.AS_IT_LIES,
        line,
        corners(piece, line, lines(lines, DrawnCutLines.CORNERS)));
  }

  /** The search for corners wants many points; where the file tells corners, it is told them. */
  private static Set<Point> corners(String piece, Polyline line, List<Polyline> told) {
    Set<Point> all = new HashSet<>();
    for (Polyline some : told) {
      for (int i = 0; i < some.size(); i++) {
        all.add(some.point(i));
      }
    }
    Set<Point> corners = new LinkedHashSet<>();
    for (int i = 1; i < line.size() - 1; i++) {
      Vector arriving = line.point(i).minus(line.point(i - 1));
      Vector leaving = line.point(i + 1).minus(line.point(i));
      boolean turns = Math.abs(arriving.turnTo(leaving).toDegrees()) > SHARP_DEGREES;
      if (turns && all.contains(line.point(i))) {
        corners.add(line.point(i));
      }
    }
    if (corners.size() > MOST_CORNERS) {
      throw DraftingException.of("a cut line has too many corners")
          .at(piece)
          .value(corners.size())
          .accepted("at most " + MOST_CORNERS);
    }
    return corners;
  }

  private static List<Polyline> lines(List<Stroke> lines, String edge) {
    return lines.stream().filter(line -> line.edge().equals(edge)).map(Stroke::line).toList();
  }

  /** Where the fold lies across the drawing. */
  private static double fold(String piece, Polyline fold) {
    Point start = fold.point(0);
    Point end = fold.point(fold.size() - 1);
    if (Math.abs(start.x() - end.x()) > UPRIGHT_MM) {
      throw DraftingException.of("the fold is not upright")
          .at(piece)
          .value(start + " to " + end)
          .accepted("a fold that runs straight down the drawing");
    }
    return (start.x() + end.x()) / 2;
  }
}
