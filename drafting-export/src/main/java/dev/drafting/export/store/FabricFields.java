package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.fabric.Shrinkage;
import dev.drafting.knit.fabric.Structure;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Fabrics as far as they are known, and the garment that is copied. */
final class FabricFields {
  private FabricFields() {}

  static Map<String, Object> of(Map<String, Fabric> fabrics) {
    Map<String, Object> all = new LinkedHashMap<>();
    fabrics.forEach((cloth, fabric) -> all.put(cloth, of(fabric)));
    return all;
  }

  private static Map<String, Object> of(Fabric fabric) {
    return fields(
        "name", fabric.name(),
        "structure", fabric.structure(),
        "stretchAcross", fabric.stretchAcross(),
        "uncertainty", fabric.uncertainty(),
        "stretchAlong", known(fabric.stretchAlong()),
        "recovery", known(fabric.recovery()),
        "shrinkageAcross", fabric.shrinkage().across(),
        "shrinkageAlong", fabric.shrinkage().along(),
        "prewashed", fabric.isPrewashed(),
        "width", fabric.width().orElse(null),
        "gramsPerSquareMetre", known(fabric.mass()),
        "curls", fabric.curls(),
        "oneWay", fabric.isOneWay(),
        "tension", fabric.tension());
  }

  private static @Nullable Double known(OptionalDouble number) {
    return number.isPresent() ? number.getAsDouble() : null;
  }

  static @Nullable Map<String, Object> of(@Nullable Original original) {
    return original == null
        ? null
        : fields(
            "fabric", of(original.fabric()),
            "girth", original.girth().orElse(null),
            "seams", original.seams(),
            "shoulders", original.includesShoulders());
  }

  static Fabric fabric(Node node) {
    return node.placed(
        () -> {
          Fabric fabric =
              Fabric.of(
                      node.get("name").text(),
                      node.get("structure").constant(Structure.class),
                      node.get("stretchAcross").number())
                  .withUncertainty(node.get("uncertainty").number())
                  .withShrinkage(
                      new Shrinkage(
                          node.get("shrinkageAcross").number(),
                          node.get("shrinkageAlong").number()))
                  .withCurl(node.get("curls").truth())
                  .withTension(node.get("tension").number());
          fabric = node.get("prewashed").truth() ? fabric.prewashed() : fabric;
          return withMeasured(node.get("oneWay").truth() ? fabric : fabric.bothWays(), node);
        });
  }

  private static Fabric withMeasured(Fabric plain, Node node) {
    Fabric fabric = plain;
    if (node.find("stretchAlong").isPresent()) {
      fabric = fabric.withStretchAlong(node.get("stretchAlong").number());
    }
    if (node.find("recovery").isPresent()) {
      fabric = fabric.withRecovery(node.get("recovery").number());
    }
    if (node.find("width").isPresent()) {
      fabric = fabric.withWidth(node.get("width").length());
    }
    if (node.find("gramsPerSquareMetre").isPresent()) {
      fabric = fabric.withMass(node.get("gramsPerSquareMetre").number());
    }
    return fabric;
  }

  static Original original(Node node) {
    return node.placed(
        () -> {
          String[] seams = node.get("seams").list(Node::text).toArray(String[]::new);
          Original plain = Original.of(fabric(node.get("fabric"))).withSeams(seams);
          Original original = node.get("shoulders").truth() ? plain.withShoulders() : plain;
          return node.find("girth")
              .map(girth -> original.withGirth(girth.length()))
              .orElse(original);
        });
  }
}
