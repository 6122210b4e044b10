package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;

/**
 * Templates by their ids. Two with one id are refused, whether they were given by hand or found on
 * the class path.
 *
 * <pre>{@code
 * Templates.installed().ids();  // => [sleeveless-top, t-shirt, straight-skirt, half-circle-skirt, leggings, beanie, raglan-sweatshirt, boxer-briefs, baby-top, childs-t-shirt]
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Templates implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
  private final Map<String, GarmentTemplate> byId;

  private Templates(Map<String, GarmentTemplate> byId) {
    this.byId = Collections.unmodifiableMap(byId);
  }

  /**
   * These templates.
   *
   * @param templates any number
   * @return the templates by their ids
   * @throws DraftingException if two have one id; it names both
   */
  public static Templates of(GarmentTemplate... templates) {
    Templates all = new Templates(new LinkedHashMap<>());
    for (GarmentTemplate template : templates) {
      all = all.with(template);
    }
    return all;
  }

  /**
   * The templates that are found by {@link ServiceLoader}: those that are built in, and those of
   * other jars.
   *
   * @return the templates by their ids
   * @throws DraftingException if two have one id; it names both
   */
  public static Templates installed() {
    Templates all = of();
    for (GarmentTemplate template : ServiceLoader.load(GarmentTemplate.class)) {
      all = all.with(template);
    }
    return all;
  }

  /**
   * These and one more.
   *
   * @param template the template
   * @return the templates
   * @throws DraftingException if there is one with its id already; it names both
   */
  public Templates with(GarmentTemplate template) {
    GarmentTemplate other = byId.get(template.id());
    if (other != null) {
      throw DraftingException.of(
              "two templates have one id, "
                  + other.getClass().getName()
                  + " and "
                  + template.getClass().getName())
          .value(template.id())
          .accepted("an id of its own for each");
    }
    Map<String, GarmentTemplate> more = new LinkedHashMap<>(byId);
    more.put(template.id(), template);
    return new Templates(more);
  }

  /**
   * The ids.
   *
   * @return in the order in which the templates were given
   */
  public List<String> ids() {
    return List.copyOf(byId.keySet());
  }

  /**
   * The template with an id.
   *
   * @param id the id
   * @return the template
   * @throws DraftingException if there is none
   */
  public GarmentTemplate get(String id) {
    GarmentTemplate template = byId.get(id);
    if (template == null) {
      throw DraftingException.of("there is no such template")
          .value(id)
          .accepted(byId.isEmpty() ? "none is installed" : String.join(", ", byId.keySet()));
    }
    return template;
  }

  private List<Object> parts() {
    List<Object> parts = new ArrayList<>(byId.keySet());
    byId.values().forEach(template -> parts.add(template.getClass()));
    return parts;
  }

  /** The same ids in the same order, each with a template of the same class. */
  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(List<GarmentTemplate> templates) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(templates.toArray(GarmentTemplate[]::new));
    }
  }

  private Object writeReplace() {
    return new Kept(List.copyOf(byId.values()));
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a set of templates is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Templates that && that.parts().equals(parts());
  }

  @Override
  public int hashCode() {
    return byId.keySet().hashCode();
  }

  @Override
  public String toString() {
    return byId.isEmpty() ? "no templates" : String.join(", ", byId.keySet());
  }
}
