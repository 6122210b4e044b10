package dev.drafting.core.alter;

import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** An edge with another finish. */
record FinishSwap(EdgeRef edge, Finish finish) implements Alteration {
  @Override
  public String id() {
    return "finish";
  }

  @Override
  public Map<String, String> settings() {
    Map<String, String> settings = new LinkedHashMap<>();
    settings.put("edge", edge.toString());
    settings.put("finish", finish.id());
    finish.settings().forEach((name, value) -> settings.put("finish " + name, value));
    return Collections.unmodifiableMap(settings);
  }

  @Override
  public String describe() {
    return "finish " + edge + " as " + finish.describe();
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    return pattern.withFinish(edge, finish);
  }

  @Override
  public String toString() {
    return describe();
  }
}
