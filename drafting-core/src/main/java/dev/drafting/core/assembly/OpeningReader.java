package dev.drafting.core.assembly;

import dev.drafting.core.assembly.Face.Side;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Turns boundary loops into openings with names, lengths and stations. */
final class OpeningReader {
  private final Pattern pattern;
  private final Surface surface;
  private final List<List<LoopStep>> loops;
  private final List<String> names;

  OpeningReader(Pattern pattern, Surface surface) {
    this.pattern = pattern;
    this.surface = surface;
    this.loops = surface.loops();
    this.names = names();
  }

  List<List<LoopStep>> loops() {
    return loops;
  }

  /** The names of the openings in the order of the loops. */
  private List<String> names() {
    List<String> plain = loops.stream().map(this::plainName).toList();
    Map<String, Integer> used = new HashMap<>();
    List<String> unique = new ArrayList<>();
    for (int i = 0; i < loops.size(); i++) {
      String plainName = plain.get(i);
      boolean several = Collections.frequency(plain, plainName) > 1;
      String name = several ? plainName + hand(loops.get(i)) : plainName;
      int times = used.merge(name, 1, Integer::sum);
      unique.add(times == 1 ? name : name + " " + times);
    }
    return unique;
  }

  private String plainName(List<LoopStep> loop) {
    return loop.stream()
        .map(step -> surface.side(step.side).edge.name())
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  /** Which hand a loop is on: the drawn copies are the right, their images the left. */
  private String hand(List<LoopStep> loop) {
    Set<Boolean> copies = new HashSet<>();
    loop.forEach(step -> copies.add(surface.side(step.side).face.mirrored));
    if (copies.size() > 1) {
      return "";
    }
    return copies.contains(true) ? " (left)" : " (right)";
  }

  String name(int loop) {
    return names.get(loop);
  }

  List<Opening> openings() {
    List<Opening> openings = new ArrayList<>();
    for (int i = 0; i < loops.size(); i++) {
      openings.add(opening(name(i), loops.get(i)));
    }
    return List.copyOf(openings);
  }

  private Opening opening(String name, List<LoopStep> loop) {
    List<OpeningPart> parts = new ArrayList<>();
    List<OpeningStation> stations = new ArrayList<>();
    Set<Piece> pieces = new LinkedHashSet<>();
    Length at = Length.ZERO;
    LoopStep before = loop.get(loop.size() - 1);
    for (LoopStep step : loop) {
      Side side = surface.side(step.side);
      Piece piece = side.face.piece;
      Curve drawn = side.edge.curve();
      Curve curve = step.asDrawn ? drawn : drawn.mirrored().reversed();
      EdgeRef ref = new EdgeRef(piece.name(), side.edge.name());
      stations.add(new OpeningStation(at, label(before), Angle.radians(before.angle)));
      parts.add(new OpeningPart(ref, side.face.mirrored, curve, at));
      pieces.add(pattern.piece(piece.name()));
      at = at.plus(curve.length());
      before = step;
    }
    return new Opening(name, parts, stations, List.copyOf(pieces));
  }

  /** What a maker calls the place at the end of a step. */
  static String label(LoopStep step) {
    List<String> words = new ArrayList<>(step.seams);
    step.folds.forEach(piece -> words.add("centre " + piece));
    return words.isEmpty() ? "corner" : String.join(" and ", words);
  }
}
