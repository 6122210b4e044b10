package dev.drafting.core.alter;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An edge drawn anew between two places, which are told on the finished or on the raw edge. */
@SuppressWarnings("serial") // always an unmodifiable list of the JDK
record EdgeReshaping(EdgeRef edge, List<EdgePlace> places, Length outward, boolean onRawEdge)
    implements Alteration {
  @Override
  public String id() {
    return onRawEdge ? "snip" : "reshape";
  }

  @Override
  public Map<String, String> settings() {
    return Settings.of(
        "edge", edge,
        "from", places.get(0).setting(),
        "at", places.get(1).setting(),
        "to", places.get(2).setting(),
        "outward", outward);
  }

  @Override
  public String describe() {
    if (onRawEdge) {
      return (outward.isNegative() ? "snip " : "add ")
          + Settings.amount(outward)
          + (outward.isNegative() ? " off the raw edge of " : " to the raw edge of ")
          + edge
          + " "
          + places.get(1)
          + ", fading to nothing "
          + places.get(2);
    }
    return "move "
        + edge
        + " "
        + (outward.isNegative() ? "in" : "out")
        + " by "
        + Settings.amount(outward)
        + " "
        + places.get(1)
        + ", fading to nothing "
        + places.get(0)
        + " and "
        + places.get(2);
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    SeamSide side = SeamSide.of(pattern, edge);
    List<Length> along = along(side);
    Follow follow = new Follow(pattern);
    follow.shift(edge, along, outward);
    partner(pattern)
        .ifPresent(
            other -> follow.shift(other.ref(), mapped(along, side, other, pattern), outward));
    return follow.result();
  }

  /** The places along the finished edge, in its direction. */
  private List<Length> along(SeamSide side) {
    List<Length> along = new ArrayList<>();
    if (onRawEdge) {
      CutEdge cut = CutEdge.of(side);
      places.forEach(place -> along.add(cut.finished(place)));
    } else {
      places.forEach(place -> along.add(place.along(side, side.curve().length())));
    }
    along.sort(Comparator.naturalOrder());
    return List.copyOf(along);
  }

  /** The edge on the other side, if one edge is sewn to one. */
  private Optional<SeamSide> partner(Pattern pattern) {
    for (Seam seam : pattern.seams()) {
      if (seam.first().equals(List.of(edge)) && !seam.isMirrored() && seam.second().size() == 1) {
        return Optional.of(SeamSide.of(pattern, seam.second().get(0)));
      }
      if (seam.second().equals(List.of(edge)) && !seam.isMirrored() && seam.first().size() == 1) {
        return Optional.of(SeamSide.of(pattern, seam.first().get(0)));
      }
    }
    return Optional.empty();
  }

  /** The same shares of the other edge's length. */
  private List<Length> mapped(List<Length> along, SeamSide side, SeamSide other, Pattern pattern) {
    boolean backwards =
        pattern.seams().stream()
            .filter(seam -> seam.first().contains(edge) || seam.second().contains(edge))
            .anyMatch(Seam::isEndToStart);
    Length here = side.curve().length();
    Length there = other.curve().length();
    List<Length> places = new ArrayList<>();
    for (Length place : along) {
      Length share = place.equals(here) ? there : there.times(place.ratioTo(here));
      places.add(backwards ? there.minus(share) : share);
    }
    places.sort(Comparator.naturalOrder());
    return places;
  }

  @Override
  public String toString() {
    return describe();
  }
}
