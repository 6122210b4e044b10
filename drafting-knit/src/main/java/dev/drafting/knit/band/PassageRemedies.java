package dev.drafting.knit.band;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why an opening does not go over, and what to do about it, first things first. */
final class PassageRemedies {
  /** What the stretchiest ribs give on the gauge. */
  private static final double MOST_STRETCH = 1.5;

  /** Narrower than this a band can hardly be sewn. */
  private static final double NARROWEST_MM = 6;

  private final BodyPassage check;

  private PassageRemedies(BodyPassage check) {
    this.check = check;
  }

  static Finding finding(BodyPassage check) {
    PassageRemedies remedies = new PassageRemedies(check);
    Finding finding =
        Finding.problem(
            check.part().plainName() + ".too-small",
            Place.opening(check.opening().name()),
            remedies.reason());
    for (Remedy remedy : remedies.inOrder()) {
      finding = finding.withRemedy(remedy);
    }
    return finding;
  }

  private String reason() {
    return "The "
        + check.opening().name()
        + " stretches to "
        + Wording.amount(check.stretchedOpening())
        + " and the "
        + check.part().needs()
        + Wording.amount(check.needed())
        + " ("
        + Wording.amount(check.girth())
        + " and "
        + Wording.amount(check.clearance())
        + " to spare): it will not go "
        + check.part().over()
        + ". What holds it is "
        + holder()
        + ".";
  }

  private String holder() {
    return switch (check.limit()) {
      case STRIP -> "the " + noun();
      case SEAM -> "the stitches of its seam";
      case BODY -> "the garment's own edge";
    };
  }

  private String noun() {
    return check.strip().map(strip -> strip.finish().noun()).orElse("edge");
  }

  private Iterable<Remedy> inOrder() {
    Stream<Optional<Remedy>> computed =
        bodyStretch().isPresent() || seamHolds()
            ? Stream.of(lowerNeck(), givingSeam(), stretchierCloth())
            : Stream.of(lowerNeck(), longerLoop(), narrowerBand(), stretchierCloth());
    Remedy leftOpen =
        Remedy.of(check.part().leftOpen()).with("opening.at", check.part().leftOpenAt());
    return Stream.concat(
            Stream.concat(longerPlacket().stream(), computed.flatMap(Optional::stream)),
            Stream.of(leftOpen))
        .toList();
  }

  /** Every millimetre of it adds two. */
  private Optional<Remedy> longerPlacket() {
    if (check.placket().isZero()) {
      return Optional.empty();
    }
    Length by = Length.mm(Math.ceil(check.margin().negated().toMm() / 2));
    return Optional.of(
        Remedy.of("Make the placket " + Wording.amount(by) + " longer.")
            .with("placket.longer-by", by.toString()));
  }

  private boolean seamHolds() {
    return check.limit() == BodyPassage.Limit.SEAM;
  }

  private Optional<Remedy> givingSeam() {
    return seamHolds()
        ? Optional.of(
            Remedy.of("Sew it with an overlock or a zigzag, which give as much as the cloth.")
                .with("seam.stitch", "overlock"))
        : Optional.empty();
  }

  /** The stretch that the garment's cloth would need, where its edge is what holds. */
  private Optional<Double> bodyStretch() {
    return stretchFor(check.bodyEdge(), check.body());
  }

  /** The stretch that the strip's cloth would need, where the strip is what holds. */
  private Optional<Double> stripStretch() {
    return check.strip().flatMap(strip -> stretchFor(strip.loop(), strip.fabric()));
  }

  private Optional<Double> stretchFor(Length relaxed, Fabric fabric) {
    double inUse = check.neededOfOpening().ratioTo(relaxed) - 1;
    return inUse <= fabric.usableStretch()
        ? Optional.empty()
        : Optional.of(Fabric.stretchForUse(inUse));
  }

  /** The loop that reaches over the head. */
  private Length neededLoop(Strip strip) {
    return check.neededOfOpening().dividedBy(1 + strip.fit().usableStretch());
  }

  /** The strip grows with its edge; the garment's own edge grows by the same length. */
  private Optional<Remedy> lowerNeck() {
    if (check.part() != BodyPart.HEAD) {
      return Optional.empty();
    }
    Length edge = check.opening().length();
    Length wantedForBody =
        check.neededOfOpening().dividedBy(1 + check.body().usableStretch()).minus(check.bodyEdge());
    Length wantedForStrip =
        check
            .strip()
            .map(strip -> edge.times(neededLoop(strip).ratioTo(strip.loop()) - 1))
            .orElse(Length.ZERO);
    return NeckLowering.by(check.opening(), wantedForBody.max(wantedForStrip))
        .map(
            drop ->
                Remedy.of(
                        "Lower the front neck by "
                            + Wording.amount(drop)
                            + check.strip().map(s -> " and cut the " + noun() + " to it").orElse("")
                            + ".")
                    .with("neck.lower-by", drop.toString()));
  }

  private Optional<Remedy> longerLoop() {
    return check
        .strip()
        .filter(strip -> neededLoop(strip).compareTo(strip.window().longest()) <= 0)
        .map(
            strip -> {
              Length shortest = neededLoop(strip).max(strip.window().shortest());
              Length longest = strip.window().longest();
              return Remedy.of(
                      "Cut the "
                          + noun()
                          + " "
                          + Wording.range(strip.cutLength(shortest), strip.cutLength(longest))
                          + " long: it still lies flat.")
                  .with("strip.loop", shortest.plus(longest).dividedBy(2).toString());
            });
  }

  /** At the same seam a narrower band has a longer fold, and so a longer loop in mid-window. */
  private Optional<Remedy> narrowerBand() {
    double turning = check.opening().turning().toRadians();
    if (check.strip().isEmpty() || turning <= 0) {
      return Optional.empty();
    }
    Strip strip = check.strip().get();
    if (strip.finish() instanceof FacedStrip || strip.finish().intent() != Intent.LIES_FLAT) {
      return Optional.empty();
    }
    Length spare = strip.joinLine().minus(neededLoop(strip));
    double width = Math.floor(spare.toMm() / (0.75 * turning));
    if (width < NARROWEST_MM || width >= strip.finish().showing().toMm()) {
      return Optional.empty();
    }
    Length narrower = Length.mm(width);
    return Optional.of(
        Remedy.of(
                "Leave the seam where it is and let the "
                    + noun()
                    + " show "
                    + Wording.amount(narrower)
                    + " instead of "
                    + Wording.amount(strip.finish().showing())
                    + "; cut it anew.")
            .with("band.showing", narrower.toString()));
  }

  /** Both cloths where both hold: one alone would not help. */
  private Optional<Remedy> stretchierCloth() {
    Optional<Double> body = bodyStretch();
    Optional<Double> strip = stripStretch();
    boolean exists =
        (body.isPresent() || strip.isPresent())
            && Stream.of(body, strip).flatMap(Optional::stream).allMatch(s -> s <= MOST_STRETCH);
    if (!exists) {
      return Optional.empty();
    }
    String cloths =
        Stream.of(
                body.map(share -> "the garment from a cloth that stretches " + orMore(share)),
                strip.map(share -> "the " + noun() + " from a rib that stretches " + orMore(share)))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", and "));
    Remedy remedy = Remedy.of("Cut " + cloths + ".");
    if (body.isPresent()) {
      remedy = remedy.with("body.stretch", String.valueOf(body.get()));
    }
    if (strip.isPresent()) {
      remedy = remedy.with("strip.stretch", String.valueOf(strip.get()));
    }
    return Optional.of(remedy);
  }

  private static String orMore(double share) {
    return Wording.percent(share) + " or more";
  }
}
