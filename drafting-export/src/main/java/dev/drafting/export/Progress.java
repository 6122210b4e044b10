package dev.drafting.export;

import dev.drafting.core.Stable;

/**
 * Is told how far long work has come.
 *
 * @since 0.1
 */
@Stable
@FunctionalInterface
public interface Progress {
  /**
   * A step has begun, or all are done.
   *
   * @param what the step in words, for instance "writing boathouse-vest-a4.pdf"
   * @param done how many steps are done
   * @param of how many steps there are
   */
  void step(String what, int done, int of);

  /**
   * Tells nobody.
   *
   * @return a listener that does nothing
   */
  static Progress none() {
    return (what, done, of) -> {};
  }
}
