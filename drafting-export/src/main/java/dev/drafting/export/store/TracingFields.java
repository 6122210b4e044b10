package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import java.util.Map;

/** A tracing: its strokes as x and y of every point in turn. */
final class TracingFields {
  private TracingFields() {}

  static Map<String, Object> of(Tracing tracing) {
    return fields(
        "piece", tracing.piece(),
        "extent", tracing.extent(),
        "strokes", tracing.edges().stream().map(TracingFields::of).toList());
  }

  private static Map<String, Object> of(TracedEdge stroke) {
    return fields(
        "edge", stroke.name(),
        "points", stroke.points().toArray(),
        "reordered", stroke.isReordered() ? true : null);
  }

  static Tracing read(Node node) {
    return node.placed(
        () ->
            Tracing.of(
                node.get("piece").text(),
                node.get("extent").constant(Extent.class),
                node.get("strokes").list(TracingFields::stroke)));
  }

  private static TracedEdge stroke(Node node) {
    TracedEdge stroke =
        node.placed(() -> TracedEdge.of(node.get("edge").text(), node.get("points").numbers()));
    boolean reordered = node.find("reordered").map(Node::truth).orElse(false);
    return reordered ? stroke.reordered() : stroke;
  }
}
