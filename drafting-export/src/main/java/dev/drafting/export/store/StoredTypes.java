package dev.drafting.export.store;

import dev.drafting.core.Experimental;
import dev.drafting.core.alter.Alteration;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Finish;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The finishes and alterations that can be made again from their id and settings: those of the
 * library, and one's own.
 *
 * <pre>{@code
 * StoredTypes types = StoredTypes.usual().withFinish("scallops", settings -> RawEdge.of());
 * types;  // => finishes casing, faced, faced-strip, fold, folded-band, raw, scallops, seam, turned-hem, wrapped-binding; alterations finish, gape, lengthen, neck-depth, reshape, seam-end, seam-move, seam-swing, snip
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class StoredTypes {
  private static final StoredTypes USUAL = builtIn();

  private final Map<String, Function<Map<String, String>, Finish>> finishes;
  private final Map<String, Function<Map<String, String>, Alteration>> alterations;

  private StoredTypes(
      Map<String, Function<Map<String, String>, Finish>> finishes,
      Map<String, Function<Map<String, String>, Alteration>> alterations) {
    this.finishes = Collections.unmodifiableMap(finishes);
    this.alterations = Collections.unmodifiableMap(alterations);
  }

  private static StoredTypes builtIn() {
    return new StoredTypes(
        new TreeMap<>(FinishMakers.all()), new TreeMap<>(AlterationMakers.all()));
  }

  /**
   * What the library itself has.
   *
   * @return the types
   */
  public static StoredTypes usual() {
    return USUAL;
  }

  /**
   * Also a finish of one's own.
   *
   * @param id the finish's {@link Finish#id()}, not that of another
   * @param maker makes it from its {@link Finish#settings()}
   * @return the types with this one
   * @throws DraftingException if the id is taken
   */
  public StoredTypes withFinish(String id, Function<Map<String, String>, Finish> maker) {
    return new StoredTypes(with(finishes, "finish", id, maker), alterations);
  }

  /**
   * Also an alteration of one's own.
   *
   * @param id the alteration's {@link Alteration#id()}, not that of another
   * @param maker makes it from its {@link Alteration#settings()}
   * @return the types with this one
   * @throws DraftingException if the id is taken
   */
  public StoredTypes withAlteration(String id, Function<Map<String, String>, Alteration> maker) {
    return new StoredTypes(finishes, with(alterations, "alteration", id, maker));
  }

  private static <T> Map<String, T> with(Map<String, T> map, String what, String id, T maker) {
    Map<String, T> more = new TreeMap<>(map);
    if (more.put(id, Objects.requireNonNull(maker, "maker")) != null) {
      throw DraftingException.of("there is another " + what + " of this id")
          .value(id)
          .accepted("an id besides " + String.join(", ", map.keySet()));
    }
    return more;
  }

  Optional<Finish> finish(String id, Map<String, String> settings) {
    return Optional.ofNullable(finishes.get(id)).map(maker -> maker.apply(settings));
  }

  /** An alteration that gives an edge a finish is known where its finish is. */
  Optional<Alteration> alteration(String id, Map<String, String> settings) {
    if (id.equals(AlterationMakers.FINISH)) {
      return AlterationMakers.finish(settings, this);
    }
    return Optional.ofNullable(alterations.get(id)).map(maker -> maker.apply(settings));
  }

  /** The ids of all. */
  @Override
  public String toString() {
    return "finishes "
        + String.join(", ", finishes.keySet())
        + "; alterations "
        + String.join(", ", alterations.keySet());
  }
}
