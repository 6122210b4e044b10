package dev.drafting.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.lay.StripLay;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.locationtech.jts.geom.Polygon;

/**
 * How densely shapes are laid on a strip, and how long the lay of a garment takes. Published
 * instances are read from {@code -Dinstances=FOLDER}, in the JSON form of their collection: width
 * of the strip, shapes with how often and in which turns; {@code -Dseconds=N} is how long each may
 * take. The bounds are those for two seconds, or for a minute where as much is given. Every result
 * is looked at for overlaps by JTS.
 */
final class LayTable implements Table {
  private static final Map<String, double[]> BOUNDS =
      Map.of(
          "shirts", new double[] {83, 88.2},
          "trousers", new double[] {86, 90.5},
          "swim", new double[] {67, 74.7},
          "jakobs1", new double[] {76, 85},
          "jakobs2", new double[] {69, 80},
          "shapes0", new double[] {58, 66},
          "shapes1", new double[] {61, 73});
  private static final double GARMENT_MS = 300;
  private static final int MINUTE = 60;
  private static final int FEW = 50;
  private static final int MANY = 500;
  private static final Length FLAT = Length.mm(0.01);

  @Override
  public String name() {
    return "lay";
  }

  @Override
  public List<Row> rows() throws Exception {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.atMost(name(), "vest, everything from its body cloth", garment(), "ms", GARMENT_MS));
    double few = different(FEW);
    double many = different(MANY);
    rows.add(Row.plain(name(), MANY + " different pieces, ten rounds", many, "s"));
    rows.add(
        Row.plain(
            name(),
            "time from " + FEW + " to " + MANY + " different pieces grows with the power",
            Math.log(many / few) / Math.log((double) MANY / FEW),
            "1"));
    String folder = System.getProperty("instances", "");
    if (!folder.isEmpty()) {
      int seconds = Integer.getInteger("seconds", 2);
      for (String instance : new TreeMap<>(BOUNDS).keySet()) {
        Path file = Path.of(folder, instance + ".json");
        if (Files.exists(file)) {
          double bound = BOUNDS.getOrDefault(instance, new double[2])[seconds < MINUTE ? 0 : 1];
          String what = instance + " in " + seconds + " s, density";
          rows.add(Row.atLeast(name(), what, density(file, seconds), "%", bound));
        }
      }
    }
    return rows;
  }

  /** How many seconds it takes to lay so many pieces, no two alike. */
  private static double different(int count) {
    Random random = new Random(5);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double w = 80 + 300 * random.nextDouble();
      double h = 80 + 400 * random.nextDouble();
      Point[] corners = {
        new Point(0, 0), new Point(w, 0), new Point(0.9 * w, h), new Point(0.2 * w, 0.9 * h)
      };
      Point in = new Point(0.05 * w, 0.5 * h);
      pieces.add(
          Piece.of(
                  "piece " + i,
                  List.of(
                      Edge.of("hem", Curve.line(corners[0], corners[1])),
                      Edge.of("side", Curve.line(corners[1], corners[2])),
                      Edge.of("top", Curve.line(corners[2], corners[3])),
                      Edge.of("curve", Curve.of(new Cubic(corners[3], in, in, corners[0])))))
              .withCutting(Cutting.single(1)));
    }
    Lay lay =
        Lay.on(Cloth.of(Length.cm(150)))
            .with(CutPlan.of(Pattern.of("pieces", pieces, List.of())).pieces());
    long start = System.nanoTime();
    if (lay.plan(1, 10).pieces().size() != count) {
      throw new IllegalStateException("not all pieces are laid");
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static double garment() {
    Cloth cloth = Cloth.of(Length.cm(150)).foldedToTheMiddle();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 10; i++) {
      long start = System.nanoTime();
      LayPlan plan = Vest.draft().lay("body", cloth).plan(1, 50);
      if (!plan.fits()) {
        throw new IllegalStateException("as much cloth as needed is too little");
      }
      least = Math.min(least, (System.nanoTime() - start) / 1e6);
    }
    return least;
  }

  private static double density(Path file, int seconds) throws IOException {
    JsonNode instance = new ObjectMapper().readTree(file.toFile());
    double width = instance.get("strip_height").asDouble();
    StripLay lay = StripLay.of(Length.mm(width));
    for (JsonNode item : instance.get("items")) {
      List<Angle> turns = new ArrayList<>();
      item.get("allowed_orientations").forEach(turn -> turns.add(Angle.degrees(turn.asDouble())));
      List<Point> corners = new ArrayList<>();
      for (JsonNode corner : item.get("shape").get("data")) {
        corners.add(new Point(corner.get(0).asDouble(), corner.get(1).asDouble()));
      }
      Curve outline = Curve.polyline(corners.toArray(new Point[0]));
      lay = lay.with(outline, item.get("demand").asInt(), turns.toArray(new Angle[0]));
    }
    StripLay.Result result = lay.plan(1, Duration.ofSeconds(seconds), length -> true);
    List<Polygon> laid =
        result.outlines().stream()
            .map(
                curve ->
                    JtsBridge.toPolygon(curve.areaSquareMm() < 0 ? curve.reversed() : curve, FLAT))
            .toList();
    return 100
        * checkedArea(laid, width, result.length().toMm())
        / (width * result.length().toMm());
  }

  private static double checkedArea(List<Polygon> laid, double width, double length) {
    double sum = 0;
    double overlap = 0;
    for (int i = 0; i < laid.size(); i++) {
      sum += laid.get(i).getArea();
      for (int j = 0; j < i; j++) {
        if (laid.get(i).getEnvelopeInternal().intersects(laid.get(j).getEnvelopeInternal())) {
          overlap += laid.get(i).intersection(laid.get(j)).getArea();
        }
      }
      double slack = 1e-6 * width;
      var box = laid.get(i).getEnvelopeInternal();
      if (box.getMinX() < -slack
          || box.getMinY() < -slack
          || box.getMaxY() > width + slack
          || box.getMaxX() > length + slack) {
        throw new IllegalStateException("a shape lies off the strip");
      }
    }
    if (overlap > 1e-6 * sum) {
      throw new IllegalStateException("shapes overlap by " + overlap);
    }
    return sum;
  }
}
