package dev.drafting.export;

import dev.drafting.core.Stable;

/**
 * Is told how far long work has come.
 *
 * <pre>{@code
 * Progress quiet = Progress.none();
 * Progress told = (what, done, of) -> System.err.println(what);
 * }</pre>
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
