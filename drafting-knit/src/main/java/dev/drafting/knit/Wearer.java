package dev.drafting.knit;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * Who will wear the garment, as far as it is known. Girths are taken as ISO 8559-1 says: chest
 * horizontal over the fullest part, head horizontal above the ears.
 *
 * <pre>{@code
 * Wearer.of().withChest(Length.cm(98)).withHead(Length.cm(58));  // => chest 98 cm, head 58 cm
 * Wearer.of().withAge(6);  // => 6 years
 * Wearer.of(Body.of().with(BodyMeasure.BUST_GIRTH, Length.cm(92)).with(BodyMeasure.HIP_GIRTH, Length.cm(98)));  // => chest 92 cm, hips 98 cm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Wearer implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Wearer UNKNOWN = new Wearer(null, Map.of(), null, null);

  private final @Nullable Length chest;

  @SuppressWarnings("serial") // always an unmodifiable view of an EnumMap
  private final Map<BodyPart, Length> girths;

  private final @Nullable Length height;
  private final @Nullable Integer age;

  private Wearer(
      @Nullable Length chest,
      Map<BodyPart, Length> girths,
      @Nullable Length height,
      @Nullable Integer age) {
    this.chest = chest;
    this.girths = girths;
    this.height = height;
    this.age = age;
  }

  /**
   * A wearer of whom nothing is known yet.
   *
   * @return the wearer
   */
  public static Wearer of() {
    return UNKNOWN;
  }

  /**
   * The wearer with this body: what is known of chest or bust, head, hip, height and age.
   *
   * @param body its measures
   * @return the wearer
   */
  @Experimental
  public static Wearer of(Body body) {
    Wearer wearer =
        new Wearer(
            body.measure(BodyMeasure.BUST_GIRTH)
                .or(() -> body.measure(BodyMeasure.CHEST_GIRTH))
                .orElse(null),
            Map.of(),
            body.measure(BodyMeasure.HEIGHT).orElse(null),
            body.age().isPresent() ? body.age().getAsInt() : null);
    Optional<Length> head = body.measure(BodyMeasure.HEAD_GIRTH);
    Wearer known = head.isPresent() ? wearer.withHead(head.get()) : wearer;
    return body.measure(BodyMeasure.HIP_GIRTH)
        .map(hip -> known.withGirth(BodyPart.HIPS, hip))
        .orElse(known);
  }

  /**
   * The same wearer with the chest or bust girth.
   *
   * @param girth 20 to 250 cm
   * @return a wearer with this chest
   * @throws DraftingException if the girth is out of range
   */
  public Wearer withChest(Length girth) {
    return new Wearer(within("chest girth", girth, 20, 250), girths, height, age);
  }

  /**
   * The same wearer with the head girth.
   *
   * @param girth 25 to 80 cm
   * @return a wearer with this head
   * @throws DraftingException if the girth is out of range
   */
  public Wearer withHead(Length girth) {
    return withGirth(BodyPart.HEAD, girth);
  }

  /**
   * The same wearer with the girth of what an opening has to go over.
   *
   * @param part the part of the body
   * @param girth head 25 to 80 cm; shoulders and hips 30 to 300 cm; hand 8 to 50 cm; foot 10 to 70
   *     cm
   * @return a wearer with this girth
   * @throws DraftingException if the girth is out of range
   */
  public Wearer withGirth(BodyPart part, Length girth) {
    Map<BodyPart, Length> more = new EnumMap<>(BodyPart.class);
    more.putAll(girths);
    more.put(part, checked(part, girth));
    return new Wearer(chest, Collections.unmodifiableMap(more), height, age);
  }

  private static Length checked(BodyPart part, Length girth) {
    String what = part.plainName() + " girth";
    return switch (part) {
      case HEAD -> within(what, girth, 25, 80);
      case SHOULDERS, HIPS -> within(what, girth, 30, 300);
      case HAND -> within(what, girth, 8, 50);
      case FOOT -> within(what, girth, 10, 70);
    };
  }

  /**
   * The same wearer with the height, which decides about the cautions for children's clothing where
   * the age is not known.
   *
   * @param tall 30 to 250 cm
   * @return a wearer of this height
   * @throws DraftingException if the height is out of range
   */
  public Wearer withHeight(Length tall) {
    return new Wearer(chest, girths, within("height", tall, 30, 250), age);
  }

  /**
   * The same wearer with an age, which decides about the cautions for children's clothing.
   *
   * @param years completed years, 0 to 120
   * @return a wearer of this age
   * @throws DraftingException if the age is out of range
   */
  public Wearer withAge(int years) {
    if (years < 0 || years > 120) {
      throw DraftingException.of("the age is out of range")
          .at("wearer")
          .value(years)
          .accepted("0 to 120 years");
    }
    return new Wearer(chest, girths, height, years);
  }

  private static Length within(String what, Length girth, int leastCm, int mostCm) {
    if (girth.compareTo(Length.cm(leastCm)) < 0 || girth.compareTo(Length.cm(mostCm)) > 0) {
      throw DraftingException.of("the " + what + " is out of range")
          .at("wearer")
          .value(girth)
          .accepted(leastCm + " cm to " + mostCm + " cm");
    }
    return girth;
  }

  /**
   * The chest or bust girth.
   *
   * @return the girth, or empty when it is not known
   */
  public Optional<Length> chest() {
    return Optional.ofNullable(chest);
  }

  /**
   * The head girth.
   *
   * @return the girth, or empty when it is not known
   */
  public Optional<Length> head() {
    return girth(BodyPart.HEAD);
  }

  /**
   * The girth of what an opening has to go over.
   *
   * @param part the part of the body
   * @return the girth, or empty when it is not known
   */
  public Optional<Length> girth(BodyPart part) {
    return Optional.ofNullable(girths.get(part));
  }

  /**
   * The height.
   *
   * @return the height, or empty when it is not known
   */
  public Optional<Length> height() {
    return Optional.ofNullable(height);
  }

  /**
   * The age in completed years.
   *
   * @return the age, or empty when it is not known
   */
  public OptionalInt age() {
    return age == null ? OptionalInt.empty() : OptionalInt.of(age);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      @Nullable Length chest,
      Map<BodyPart, Length> girths,
      @Nullable Length height,
      @Nullable Integer age)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Wearer wearer = chest == null ? UNKNOWN : UNKNOWN.withChest(chest);
      for (Map.Entry<BodyPart, Length> girth : girths.entrySet()) {
        wearer = wearer.withGirth(girth.getKey(), girth.getValue());
      }
      wearer = height == null ? wearer : wearer.withHeight(height);
      return age == null ? wearer : wearer.withAge(age);
    }
  }

  private Object writeReplace() {
    return new Kept(chest, girths, height, age);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a wearer is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Wearer
        && Objects.equals(((Wearer) other).chest, chest)
        && ((Wearer) other).girths.equals(girths)
        && Objects.equals(((Wearer) other).height, height)
        && Objects.equals(((Wearer) other).age, age);
  }

  @Override
  public int hashCode() {
    return Objects.hash(chest, toString(), age);
  }

  @Override
  public String toString() {
    List<String> known = new ArrayList<>();
    chest().ifPresent(girth -> known.add("chest " + Wording.amount(girth)));
    girths.forEach((part, girth) -> known.add(part.plainName() + " " + Wording.amount(girth)));
    height().ifPresent(tall -> known.add("height " + Wording.amount(tall)));
    if (age != null) {
      known.add(age == 1 ? "1 year" : age + " years");
    }
    return known.isEmpty() ? "no measures" : String.join(", ", known);
  }
}
