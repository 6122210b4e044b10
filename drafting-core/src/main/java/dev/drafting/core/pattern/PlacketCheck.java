package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;

/** What a placket must be to be cut into a piece of its pattern. */
final class PlacketCheck {
  private PlacketCheck() {}

  static void check(Pattern pattern) {
    Set<String> opened = new HashSet<>();
    for (Placket placket : pattern.plackets()) {
      try {
        if (!opened.add(placket.edge().piece())) {
          throw DraftingException.of("the piece has two plackets")
              .value(placket)
              .accepted("one placket for each piece");
        }
        refuseSewn(pattern, placket);
        refuseTakenNames(pattern, placket);
        PlacketPlace.of(pattern, placket).check();
      } catch (DraftingException e) {
        throw e.at("placket at " + placket.edge());
      }
    }
  }

  private static void refuseSewn(Pattern pattern, Placket placket) {
    boolean sewn =
        pattern.seams().stream()
            .flatMap(seam -> Stream.concat(seam.first().stream(), seam.second().stream()))
            .anyMatch(placket.edge()::equals);
    if (sewn) {
      throw DraftingException.of("the edge is sewn in a seam")
          .value(placket.edge())
          .accepted("an edge of an opening, such as the neck");
    }
  }

  private static void refuseTakenNames(Pattern pattern, Placket placket) {
    for (String name : PlacketStrips.names(placket)) {
      Names.check("a piece", name);
      if (pattern.pieces().stream().anyMatch(piece -> piece.name().equals(name))) {
        throw DraftingException.of("a piece is called as a strip of the placket is")
            .value(name)
            .accepted("another name for that piece");
      }
    }
  }
}
