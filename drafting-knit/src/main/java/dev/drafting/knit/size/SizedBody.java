package dev.drafting.knit.size;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.GirthBounds;
import java.io.Serializable;

/** One line of a table of sizes. */
record SizedBody(String name, Body body, GirthBounds interval) implements Serializable {

  /** Tells whether a main measure is of this size; one size alone is for its own measure. */
  boolean holds(Length measured) {
    return interval.least().equals(interval.most())
        ? measured.equals(interval.least())
        : measured.compareTo(interval.least()) >= 0 && measured.compareTo(interval.most()) < 0;
  }
}
