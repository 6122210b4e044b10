package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A test of a garment template, for those who test with JUnit: a class that says which template it
 * tests is all that it takes. JUnit comes from the project that tests; this library brings none.
 *
 * <pre>{@code
 * class SkirtTest implements TemplateContractTest {
 *   public GarmentTemplate template() {
 *     return Templates.installed().get("straight-skirt");
 *   }
 * }
 *
 * new SkirtTest().keepsTheContract();
 * }</pre>
 *
 * @since 0.1
 * @see TemplateContract
 */
@Experimental
public interface TemplateContractTest {
  /**
   * What is tested.
   *
   * @return the template
   */
  GarmentTemplate template();

  /**
   * Which dimensions are tried.
   *
   * @return the seed, 1 unless it is overridden
   */
  default long seed() {
    return 1;
  }

  /**
   * How many sets of dimensions are tried.
   *
   * @return 200 unless it is overridden
   */
  default int tries() {
    return 200;
  }

  /**
   * Tries the template out.
   *
   * @throws AssertionError if it does not keep its contract; it tells what, a line for each
   *     violation
   */
  @Test
  default void keepsTheContract() {
    List<String> violations = TemplateContract.check(template(), seed(), tries());
    if (!violations.isEmpty()) {
      throw new AssertionError(
          "The template "
              + template().id()
              + " does not keep its contract:\n"
              + String.join("\n", violations));
    }
  }
}
