package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Placket;
import java.util.List;
import java.util.Map;

/** What is laid on pieces and cut into them; a file may say nothing of either. */
final class PatchFields {
  private PatchFields() {}

  static Map<String, Object> of(Patch patch) {
    return fields(
        "piece", patch.piece(),
        "base", patch.base(),
        "at", new double[] {patch.at().x(), patch.at().y()},
        "openEdges", patch.openEdges());
  }

  static Map<String, Object> of(Placket placket) {
    return fields(
        "edge", placket.edge().toString(),
        "along", placket.along().orElse(null),
        "length", placket.length(),
        "width", placket.width(),
        "fasteners", placket.fasteners());
  }

  static List<Patch> patches(Node pattern) {
    return pattern.find("patches").map(all -> all.list(PatchFields::patch)).orElse(List.of());
  }

  static List<Placket> plackets(Node pattern) {
    return pattern.find("plackets").map(all -> all.list(PatchFields::placket)).orElse(List.of());
  }

  private static Patch patch(Node node) {
    double[] at = node.get("at").numbers();
    if (at.length != 2) {
      throw node.get("at").fault("this is no point").accepted("x and y");
    }
    return node.placed(
        () -> {
          Patch patch =
              Patch.of(node.get("piece").text(), node.get("base").text(), new Point(at[0], at[1]));
          for (String open : node.get("openEdges").list(Node::text)) {
            patch = patch.openAt(open);
          }
          return patch;
        });
  }

  private static Placket placket(Node node) {
    return node.placed(
        () -> {
          Placket placket =
              Placket.of(
                      node.get("edge").text(),
                      node.get("length").length(),
                      node.get("width").length())
                  .withFasteners(node.get("fasteners").count());
          return node.find("along").map(Node::length).map(placket::at).orElse(placket);
        });
  }
}
