package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * What every template has to keep, tried on dimensions from all over its bounds and at the bounds
 * themselves: outlines that do not cross themselves, seams that match to 0.01 mm less their ease,
 * nothing worse than a note found where the pieces are joined, wider pieces for more girth, the
 * same pattern for the same dimensions, and refusals that name what is out of bounds.
 *
 * <p>Of dimensions that the template {@linkplain GarmentTemplate#check says} do not go together,
 * the nearest that do are tried; they may be half of the sets at most, and never the usual
 * dimensions with one of them at its bounds.
 *
 * <p>A template that {@linkplain GarmentTemplate#growsEvenly() grows evenly} also keeps the law of
 * scale: all dimensions larger by one factor, every finished edge is larger by it, to 0.01 mm. The
 * factor is up to 1.5, as far as the bounds of all dimensions leave room; without room the law is
 * not asked for. It is tried on two hundred of the sets of dimensions at most.
 *
 * <p>In a test of one's own it is one line, in whatever library the tests are written: what it
 * returns has to be empty. For JUnit there is {@link TemplateContractTest}.
 *
 * <pre>{@code
 * TemplateContract.check(Templates.installed().get("straight-skirt"), 1, 5);  // => []
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class TemplateContract {
  private static final double MATCHED_MM = 0.01;
  private static final int MOST_TOLD = 20;
  private static final int GROWN = 200;

  private final GarmentTemplate template;
  private final List<String> violations = new ArrayList<>();

  private TemplateContract(GarmentTemplate template) {
    this.template = template;
  }

  /**
   * Tries a template out.
   *
   * @param template the template
   * @param seed which dimensions are tried
   * @param tries how many sets of them; every dimension takes as many different values
   * @return what it does not keep, in sentences; empty if it keeps everything
   */
  public static List<String> check(GarmentTemplate template, long seed, int tries) {
    TemplateContract contract = new TemplateContract(template);
    contract.usual();
    contract.outside();
    List<Dimensions> sample = contract.suited(contract.sample(seed, tries));
    sample.forEach(contract::inside);
    contract.atBounds();
    EvenGrowth growth = new EvenGrowth(template);
    if (growth.isAsked()) {
      for (Dimensions given : sample.subList(0, Math.min(tries, GROWN))) {
        growth.violation(given).ifPresent(what -> contract.tell(given, what));
      }
    }
    return contract.violations.stream().limit(MOST_TOLD).toList();
  }

  /** Sets that do not go together are drawn towards the usual one until they do. */
  private List<Dimensions> suited(List<Dimensions> sample) {
    List<Dimensions> suited = new ArrayList<>();
    int refused = 0;
    for (Dimensions given : sample) {
      Dimensions going = given.suitedTo(template);
      suited.add(going);
      if (!going.equals(given)) {
        refused++;
        nameInRefusal(given);
      }
    }
    if (2 * refused > sample.size()) {
      violations.add(
          "its bounds are too wide: "
              + refused
              + " of "
              + sample.size()
              + " sets of dimensions within them do not go together");
    }
    return suited;
  }

  private void nameInRefusal(Dimensions given) {
    try {
      template.check(given);
    } catch (DraftingException e) {
      if (template.dimensions().stream().noneMatch(d -> e.where().contains(d.name()))) {
        tell(given, "the refusal names no dimension: " + e.getMessage());
      }
    }
  }

  private void tell(Dimensions given, String what) {
    violations.add(what + " (" + given + ")");
  }

  private void usual() {
    if (template.id().isBlank() || template.dimensions().isEmpty()) {
      violations.add("it has no id or no dimensions");
    }
    Dimensions usual = Dimensions.of();
    Pattern pattern = pattern(usual);
    if (pattern == null) {
      return;
    }
    for (Dimension dimension : template.dimensions()) {
      if (dimension.girth()) {
        Length more = dimension.usual().times(1.02).min(dimension.most());
        Pattern wider = pattern(usual.with(dimension.name(), more));
        if (wider != null
            && more.compareTo(dimension.usual()) > 0
            && !(width(wider) > width(pattern))) {
          tell(usual, "more " + dimension.name() + " does not make the pieces wider");
        }
      }
    }
  }

  private void outside() {
    for (Dimension dimension : template.dimensions()) {
      for (Length outside :
          List.of(dimension.least().minus(Length.mm(1)), dimension.most().plus(Length.mm(1)))) {
        Dimensions given = Dimensions.of().with(dimension.name(), outside);
        try {
          Pattern pattern = template.pattern(given);
          tell(given, "it draws " + pattern.name() + " beyond the bounds of " + dimension.name());
        } catch (DraftingException e) {
          if (!e.where().contains(dimension.name())) {
            tell(given, "the refusal does not name " + dimension.name());
          }
        }
      }
    }
  }

  private void atBounds() {
    for (Dimension dimension : template.dimensions()) {
      inside(Dimensions.of().with(dimension.name(), dimension.least()));
      inside(Dimensions.of().with(dimension.name(), dimension.most()));
    }
  }

  private void inside(Dimensions given) {
    Pattern pattern = pattern(given);
    if (pattern == null) {
      return;
    }
    if (!pattern.equals(template.pattern(given))) {
      tell(given, "it draws another pattern the second time");
    }
    for (Piece piece : pattern.pieces()) {
      if (!piece.outline().selfCrossings().isEmpty()) {
        tell(given, "the outline of " + piece.name() + " crosses itself");
      }
    }
    for (Seam seam : pattern.seams()) {
      double off =
          length(pattern, seam.first()) - length(pattern, seam.second()) - seam.ease().toMm();
      if (Math.abs(off) > MATCHED_MM) {
        tell(given, "the sides of seam " + seam.name() + " differ by " + off + " mm");
      }
    }
    for (Finding finding : Assembly.of(pattern).findings()) {
      if (finding.severity() != Severity.NOTE) {
        tell(given, finding.toString());
      }
    }
  }

  private @Nullable Pattern pattern(Dimensions given) {
    try {
      return template.pattern(given);
    } catch (DraftingException e) {
      tell(given, String.valueOf(e.getMessage()));
      return null;
    }
  }

  private static double length(Pattern pattern, List<EdgeRef> edges) {
    return edges.stream().mapToDouble(edge -> pattern.edge(edge).length().toMm()).sum();
  }

  private static double width(Pattern pattern) {
    return pattern.pieces().stream()
        .mapToDouble(piece -> piece.outline().areaSquareMm() * piece.cutting().pieces())
        .sum();
  }

  /**
   * A Latin hypercube: every dimension takes each of as many values once (McKay and others, 1979).
   */
  private List<Dimensions> sample(long seed, int tries) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Dimensions> sample = new ArrayList<>();
    for (int i = 0; i < tries; i++) {
      Dimensions given = Dimensions.of();
      for (Choice choice : template.choices()) {
        given = given.withChoice(choice.name(), choice.options().get(i % choice.options().size()));
      }
      sample.add(given);
    }
    for (Dimension dimension : template.dimensions()) {
      int[] order = order(random, tries);
      for (int i = 0; i < tries; i++) {
        double share = (order[i] + random.nextDouble()) / tries;
        Length range = dimension.most().minus(dimension.least());
        Length length = dimension.least().plus(range.times(share));
        sample.set(i, sample.get(i).with(dimension.name(), length));
      }
    }
    return sample;
  }

  private static int[] order(SplittableRandom random, int count) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      int at = random.nextInt(i + 1);
      order[i] = order[at];
      order[at] = i;
    }
    return order;
  }
}
