package dev.drafting.core.cut;

import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is printed on a paper piece besides its name. */
final class Labels {
  private Labels() {}

  static List<String> of(Piece piece, String version) {
    List<String> labels = new ArrayList<>();
    labels.add(piece.cutting().describe() + " from " + piece.cloth() + " cloth");
    labels.add(
        piece.cutting().kind() == Cutting.Kind.SINGLE
            ? "right side of the cloth up"
            : "cloth doubled, right side inside");
    labels.add("allowances included: " + allowances(piece));
    if (!version.isEmpty()) {
      labels.add("version " + version);
    }
    return labels;
  }

  private static String allowances(Piece piece) {
    Map<Length, List<String>> edges = new LinkedHashMap<>();
    for (Edge edge : piece.edges()) {
      if (!edge.isOnFold()) {
        edges
            .computeIfAbsent(edge.finish().profile().allowance(), a -> new ArrayList<>())
            .add(edge.name());
      }
    }
    List<String> texts = new ArrayList<>();
    edges.forEach(
        (allowance, names) ->
            texts.add(
                String.join(", ", names)
                    + " "
                    + (allowance.isZero() ? "none" : allowance.text(LengthUnit.MM))));
    return String.join("; ", texts);
  }
}
