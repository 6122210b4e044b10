package dev.drafting.knit;

import dev.drafting.core.Stable;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something to buy.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.goods().get(0).what();  // => jersey
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Goods implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String what;
  private final String amount;

  private Goods(String what, String amount) {
    this.what = what;
    this.amount = amount;
  }

  static Goods of(String what, String amount) {
    return new Goods(what, amount);
  }

  /**
   * What to buy.
   *
   * @return such as the name of a fabric, or "thread"
   */
  public String what() {
    return what;
  }

  /**
   * How much of it.
   *
   * @return such as "1.4 m, 150 cm wide (estimate)"
   */
  public String amount() {
    return amount;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String what, String amount) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Goods(
          Objects.requireNonNull(what, "what"), Objects.requireNonNull(amount, "amount"));
    }
  }

  private Object writeReplace() {
    return new Kept(what, amount);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an amount of goods is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Goods
        && ((Goods) other).what.equals(what)
        && ((Goods) other).amount.equals(amount);
  }

  @Override
  public int hashCode() {
    return Objects.hash(what, amount);
  }

  @Override
  public String toString() {
    return what + ": " + amount;
  }
}
