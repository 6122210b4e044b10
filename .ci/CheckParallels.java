import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Has GEOS (geosop) judge parallels of polylines: valid, simple, and of the area of its own buffer.
 *
 * <p>Usage: java -cp LIBRARY CheckParallels.java WORKING-FOLDER
 */
public class CheckParallels {
  private static final int OUTLINES = 40;
  private static final int POINTS = 60;

  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[0]);
    for (double distance : new double[] {7, -7}) {
      List<String> sources = new ArrayList<>();
      List<String> parallels = new ArrayList<>();
      List<String> lines = new ArrayList<>();
      List<Double> lengths = new ArrayList<>();
      for (int seed = 0; seed < OUTLINES; seed++) {
        List<OffsetEdge> edges = traced(new Random(seed), distance);
        Offset offset = Offset.of(edges);
        Offset open = Offset.ofOpen(edges.subList(0, POINTS / 2));
        for (int i = 0; i < POINTS; i++) {
          offset = offset.withCorner(i, CornerTreatment.round());
          open = i + 1 < POINTS / 2 ? open.withCorner(i, CornerTreatment.round()) : open;
        }
        Curve outline = offset.result().outline();
        lengths.add(outline.length().toMm());
        sources.add("POLYGON((" + points(edges) + "))");
        parallels.add("POLYGON((" + points(outline.flatten(Length.mm(1e-4))) + "))");
        lines.add("LINESTRING(" + points(open.result().outline().flatten(Length.mm(1e-4))) + ")");
      }
      Path a = Files.write(folder.resolve("sources.wkt"), sources);
      Path b = Files.write(folder.resolve("parallels.wkt"), parallels);
      Path c = Files.write(folder.resolve("lines.wkt"), lines);
      all("true", geos(b, "isValid"));
      all("true", geos(c, "isSimple"));
      List<String> ours = geos(b, "area");
      Path buffers = Files.write(folder.resolve("buffers.wkt"), geos(a, "buffer", "" + distance));
      List<String> theirs = geos(buffers, "area");
      for (int i = 0; i < OUTLINES; i++) {
        // the eight chords that GEOS draws for a quarter circle lie within it by 0.5 % of its radius
        double allowed = 0.005 * Math.abs(distance) * 4 * Math.PI * Math.abs(distance) + 1e-3 * lengths.get(i);
        double off = Math.abs(Double.parseDouble(ours.get(i)) - Double.parseDouble(theirs.get(i)));
        if (off > allowed) {
          throw new IllegalStateException("outline " + i + " at " + distance + " differs by " + off + " mm²");
        }
      }
    }
  }

  private static void all(String wanted, List<String> found) {
    if (found.size() != OUTLINES || !found.stream().allMatch(wanted::equals)) {
      throw new IllegalStateException("expected " + OUTLINES + " times " + wanted + ": " + found);
    }
  }

  private static List<String> geos(Path file, String... operation) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("geosop", "-a", file.toString(), "-f", "txt"));
    command.add("--");
    command.addAll(List.of(operation));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    if (process.waitFor() != 0) {
      throw new IllegalStateException(command + ": " + said);
    }
    return said.lines().toList();
  }

  private static List<OffsetEdge> traced(Random random, double distance) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double turn = 2 * Math.PI * i / POINTS;
      double radius = 120 + 30 * Math.cos(2 * turn) + 4 * random.nextDouble();
      points.add(new Point(radius * Math.cos(turn), radius * Math.sin(turn)));
    }
    List<OffsetEdge> edges = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      Curve side = Curve.line(points.get(i), points.get((i + 1) % POINTS));
      edges.add(OffsetEdge.of("side " + i, side, Length.mm(distance)));
    }
    return edges;
  }

  private static String points(List<OffsetEdge> edges) {
    StringBuilder text = new StringBuilder();
    for (OffsetEdge edge : edges) {
      text.append(point(edge.curve().start())).append(", ");
    }
    return text + point(edges.get(0).curve().start());
  }

  private static String points(Polyline line) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      all.add(point(line.point(i)));
    }
    return String.join(", ", all);
  }

  private static String point(Point point) {
    return point.x() + " " + point.y();
  }
}
