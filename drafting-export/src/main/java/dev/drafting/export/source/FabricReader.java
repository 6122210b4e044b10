package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.GaugeReading;
import dev.drafting.knit.fabric.Shrinkage;
import dev.drafting.knit.fabric.Structure;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads how a fabric behaves. */
final class FabricReader {
  private static final int MOST_FABRICS = 50;
  private static final int MOST_READINGS = 20;
  private static final int MOST_STRETCH = 300;
  private static final int MOST_SHRINKAGE = 30;
  private static final Map<String, Structure> STRUCTURES = structures();

  private FabricReader() {}

  private static Map<String, Structure> structures() {
    Map<String, Structure> structures = new LinkedHashMap<>();
    structures.put("jersey", Structure.JERSEY);
    structures.put("interlock", Structure.INTERLOCK);
    structures.put("rib", Structure.RIB);
    structures.put("pique", Structure.PIQUE);
    structures.put("french terry", Structure.TERRY);
    structures.put("fleece", Structure.FLEECE);
    structures.put("ponte", Structure.PONTE);
    structures.put("swim and legging knit", Structure.ELASTIC);
    structures.put("other", Structure.OTHER);
    return structures;
  }

  /** All fabrics by their names, in the order of the file. */
  static Map<String, Fabric> fabrics(Entry list) {
    Unique<Fabric> fabrics = new Unique<>("fabric");
    for (Entry entry : list.list(1, MOST_FABRICS)) {
      Fabric fabric = fabric(entry);
      fabrics.put(entry, fabric.name(), fabric);
    }
    return fabrics.all();
  }

  private static Fabric fabric(Entry entry) {
    Fields fields =
        entry.fields(
            "name",
            "structure",
            "gauge",
            "stretch",
            "stretchAlong",
            "recovery",
            "uncertainty",
            "shrinkage",
            "swatch",
            "prewashed",
            "curls",
            "oneWay",
            "width",
            "mass",
            "tension");
    String name = fields.get("name").name();
    Structure structure = fields.get("structure").choice("structure", STRUCTURES);
    Fabric fabric = stretching(fields, name, structure);
    fabric = fields.change(fabric, "stretchAlong", (f, e) -> f.withStretchAlong(stretch(e)));
    fabric = fields.change(fabric, "recovery", (f, e) -> f.withRecovery(e.share(0, 100)));
    fabric = fields.change(fabric, "uncertainty", (f, e) -> f.withUncertainty(e.share(0, 100)));
    fabric = shrinking(fields, fabric);
    fabric = fields.change(fabric, "curls", (f, e) -> f.withCurl(e.truth()));
    fabric = fields.or("oneWay", true, Entry::truth) ? fabric : fabric.bothWays();
    fabric = fields.change(fabric, "width", (f, e) -> f.withWidth(width(e)));
    fabric = fields.change(fabric, "mass", (f, e) -> f.withMass(e.quantity("g/m2", 1, 2000)));
    fabric = fields.change(fabric, "tension", (f, e) -> f.withTension(e.share(0, 5)));
    return fields.or("prewashed", false, Entry::truth) ? fabric.prewashed() : fabric;
  }

  private static Fabric stretching(Fields fields, String name, Structure structure) {
    Optional<Entry> gauge = fields.find("gauge");
    Optional<Entry> stretch = fields.find("stretch");
    if (gauge.isPresent() == stretch.isPresent()) {
      throw fields
          .object()
          .fault("the stretch across is not given once")
          .value(name)
          .accepted("either \"gauge\", a list of readings, or \"stretch\", such as \"30 %\"");
    }
    return gauge
        .map(list -> Fabric.of(name, structure, readings(list)))
        .orElseGet(() -> Fabric.of(name, structure, stretch(stretch.orElseThrow())));
  }

  private static double stretch(Entry entry) {
    return entry.share(0, MOST_STRETCH);
  }

  private static GaugeReading[] readings(Entry list) {
    return list.list(1, MOST_READINGS).stream()
        .map(FabricReader::reading)
        .toArray(GaugeReading[]::new);
  }

  private static GaugeReading reading(Entry entry) {
    Fields fields = entry.fields("rest", "pulled", "relaxed");
    Length rest = distance(fields, "rest");
    Length pulled = distance(fields, "pulled");
    Length relaxed = distance(fields, "relaxed");
    return entry.placed(() -> GaugeReading.of(rest, pulled, relaxed));
  }

  private static Length distance(Fields fields, String field) {
    return fields.get(field).length(Length.cm(1), Length.cm(100));
  }

  private static Fabric shrinking(Fields fields, Fabric fabric) {
    Optional<Entry> swatch = fields.find("swatch");
    if (swatch.isPresent() && fields.find("shrinkage").isPresent()) {
      throw swatch
          .get()
          .fault("the shrinkage is given twice")
          .accepted("either \"shrinkage\", in per cent, or \"swatch\", measured");
    }
    return swatch
        .map(entry -> fabric.withShrinkage(swatch(entry)))
        .orElseGet(() -> fields.change(fabric, "shrinkage", FabricReader::shrinking));
  }

  private static Fabric shrinking(Fabric fabric, Entry entry) {
    Fields fields = entry.fields("across", "along");
    return fabric.withShrinkage(
        fields.get("across").share(0, MOST_SHRINKAGE),
        fields.get("along").share(0, MOST_SHRINKAGE));
  }

  /** A swatch between its marks, before and after the wash. */
  private static Shrinkage swatch(Entry entry) {
    Fields fields = entry.fields("before", "across", "along");
    Length before = distance(fields, "before");
    Length across = distance(fields, "across");
    Length along = distance(fields, "along");
    return entry.placed(() -> Shrinkage.measured(before, across, along));
  }

  private static Length width(Entry entry) {
    return entry.length(Length.cm(10), Length.cm(500));
  }
}
