package dev.drafting.core.assembly;

import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gathers what ends, crosses and stays open at every corner of the sewn pattern. */
final class JunctionReader {
  private final SewingDirections directions;
  private final Map<Integer, Place> places = new LinkedHashMap<>();
  private final Set<EdgeRef> sewn = new HashSet<>();

  private static final class Place {
    final Set<String> ending = new LinkedHashSet<>();
    final Set<String> crossing = new LinkedHashSet<>();
    final Set<EdgeRef> open = new LinkedHashSet<>();

    Junction junction() {
      return new Junction(List.copyOf(ending), List.copyOf(crossing), List.copyOf(open));
    }
  }

  private JunctionReader(SewingDirections directions) {
    this.directions = directions;
  }

  static List<Junction> read(Pattern pattern, SewingDirections directions) {
    JunctionReader reader = new JunctionReader(directions);
    directions.seams().forEach(reader::note);
    pattern.pieces().forEach(reader::noteOpenEdges);
    return reader.places.values().stream()
        .filter(place -> !place.ending.isEmpty())
        .map(Place::junction)
        .toList();
  }

  private Place place(int corner) {
    return places.computeIfAbsent(corner, c -> new Place());
  }

  private void note(SewnSeam seam) {
    for (List<SewnSeam.Run> chain : List.of(seam.first(), seam.second())) {
      List<Integer> corners = new ArrayList<>(List.of(directions.start(chain.get(0))));
      for (SewnSeam.Run run : chain) {
        sewn.add(run.edge());
        corners.add(directions.end(run));
      }
      String name = seam.seam().name();
      for (int i = 0; i < corners.size(); i++) {
        Place place = place(corners.get(i));
        boolean atEnd = i == 0 || i == corners.size() - 1;
        (atEnd ? place.ending : place.crossing).add(name);
      }
    }
  }

  private void noteOpenEdges(Piece piece) {
    for (Edge edge : piece.edges()) {
      EdgeRef ref = new EdgeRef(piece.name(), edge.name());
      if (!edge.isOnFold() && !sewn.contains(ref)) {
        SewnSeam.Run run = new SewnSeam.Run(ref, true);
        place(directions.start(run)).open.add(ref);
        place(directions.end(run)).open.add(ref);
      }
    }
  }
}
