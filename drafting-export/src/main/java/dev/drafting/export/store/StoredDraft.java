package dev.drafting.export.store;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.trace.Tracing;
import dev.drafting.export.folder.FileSet;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.io.InputStream;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.OutputStream;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A draft as it is kept in a file: with the tracings that it came from and the lay plans that were
 * made. What is read back is the same to the last bit, and is stored again as the same bytes.
 *
 * <p>The file is JSON in UTF-8, of the format "knit draft" and version 1; its schema (JSON Schema
 * 2020-12) is {@link #schema()}. Lengths are texts with their unit, points and curves numbers in
 * millimetres, angles in radians. Every later version of this library reads it. A field that nobody
 * knows is left out, and a finding says so. The last field is a check sum: a file that was changed
 * is refused. Without the check sum it is read, and a finding says so.
 *
 * <p>Finishes and alterations are stored by their id and settings together with what they give. One
 * that is not known when the file is read keeps its lines or its result and is stored again as it
 * was; a finding says so. {@link StoredTypes} makes one's own known.
 *
 * <p>An edge of more than 1,000 segments and a pattern of more than 10,000 are neither written nor
 * read: what is that fine takes minutes to draft.
 *
 * <pre>{@code
 * Piece patch = Piece.of("patch", List.of(
 *     Edge.of("below", Curve.line(new Point(0, 0), new Point(90, 0))),
 *     Edge.of("right", Curve.line(new Point(90, 0), new Point(90, 90))),
 *     Edge.of("above", Curve.line(new Point(90, 90), new Point(0, 90))),
 *     Edge.of("left", Curve.line(new Point(0, 90), new Point(0, 0)))));
 * Draft draft = Draft.of(Pattern.of("Mending", List.of(patch), List.of()));
 * StoredDraft kept = StoredDraft.of(draft);  // => Mending, without tracings or lay plans
 * StoredDraft.parse(kept.toJson()).draft().equals(draft);  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class StoredDraft implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How the names of such files end. */
  public static final String FILE_ENDING = ".draft.json";

  private static final String FORMAT = "knit draft";
  private static final int VERSION = 1;

  private final Draft draft;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Tracing> tracings;

  @SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
  private final Map<String, LayPlan> lays;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  private StoredDraft(
      Draft draft, List<Tracing> tracings, Map<String, LayPlan> lays, List<Finding> findings) {
    this.draft = draft;
    this.tracings = List.copyOf(tracings);
    this.lays = Collections.unmodifiableMap(new LinkedHashMap<>(lays));
    this.findings = List.copyOf(findings);
  }

  /**
   * A draft to be kept.
   *
   * @param draft the draft
   * @return the draft without tracings or lay plans
   */
  public static StoredDraft of(Draft draft) {
    return new StoredDraft(Objects.requireNonNull(draft, "draft"), List.of(), Map.of(), List.of());
  }

  /**
   * Also the tracings that the pattern was trued from.
   *
   * @param more what the hand drew
   * @return the draft with these tracings after those that it has
   */
  public StoredDraft withTracings(List<Tracing> more) {
    List<Tracing> all = new ArrayList<>(tracings);
    all.addAll(more);
    return new StoredDraft(draft, all, lays, findings);
  }

  /**
   * Also how the draft is laid on one of its cloths.
   *
   * @param cloth the part that the cloth plays in the pattern
   * @param plan a plan of {@code draft.lay(cloth, ...)}
   * @return the draft with this plan, in place of another for the same cloth
   * @throws DraftingException if the plan is of something else
   */
  public StoredDraft withLay(String cloth, LayPlan plan) {
    Lay own = draft.lay(cloth, plan.cloth()).withGrainWithin(plan.lay().grainWithin());
    for (Map.Entry<String, String> match : plan.lay().matching().entrySet()) {
      own = own.matching(match.getKey(), match.getValue());
    }
    if (!own.equals(plan.lay())) {
      throw DraftingException.of("this plan lays something else than the draft")
          .at(draft.name())
          .value(plan.lay())
          .accepted("a plan of draft.lay(\"" + cloth + "\", ...)");
    }
    Map<String, LayPlan> more = new LinkedHashMap<>(lays);
    more.put(cloth, plan);
    return new StoredDraft(draft, tracings, more, findings);
  }

  /**
   * The draft.
   *
   * @return the draft that was kept
   */
  public Draft draft() {
    return draft;
  }

  /**
   * What the pattern was trued from.
   *
   * @return an unmodifiable list in the order of adding
   */
  public List<Tracing> tracings() {
    return tracings;
  }

  /**
   * How the draft is laid.
   *
   * @return an unmodifiable map by cloth, in the order of adding
   */
  public Map<String, LayPlan> lays() {
    return lays;
  }

  /**
   * What is to be known of the file that this was read from.
   *
   * @return an unmodifiable list; empty for a file that was read in full, and for what was not read
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * The schema of the file, JSON Schema 2020-12.
   *
   * @return JSON
   */
  public static String schema() {
    try (InputStream in = StoredDraft.class.getResourceAsStream("draft-1.schema.json")) {
      return new String(
          Objects.requireNonNull(in, "schema").readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // never, out of the library's own jar
    }
  }

  /**
   * The text of the file.
   *
   * @return JSON, always the same for the same draft
   * @throws DraftingException if an edge or the pattern has too many segments
   */
  public String toJson() {
    return new String(bytes(), StandardCharsets.UTF_8);
  }

  private byte[] bytes() {
    Map<String, Object> laid = new LinkedHashMap<>();
    lays.forEach((cloth, plan) -> laid.put(cloth, LayFields.of(plan)));
    return Seal.sealed(
        Json.bytes(
            Json.fields(
                "format", FORMAT,
                "version", VERSION,
                "draft", DraftFields.of(draft.brief()),
                "tracings", tracings.stream().map(TracingFields::of).toList(),
                "lays", laid)));
  }

  /**
   * Writes the file to a stream, which stays open.
   *
   * @param out where to
   * @throws IOException if it cannot be written
   * @throws DraftingException as {@link #toJson} does
   */
  public void write(OutputStream out) throws IOException {
    out.write(bytes());
  }

  /**
   * Writes the file; one of the same name is replaced, or stays as it was if that fails.
   *
   * @param file such as {@code Path.of("vest.draft.json")}
   * @return the file
   * @throws IOException if it cannot be written
   * @throws DraftingException as {@link #toJson} does
   */
  public Path write(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Path fresh = Files.createTempFile(folder, ".drafting-", ".json");
    try {
      Files.write(fresh, bytes());
      return Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  /**
   * Reads a file with the types of the library.
   *
   * @param file a stored draft of at most 25 MB
   * @return what was kept
   * @throws DraftingException if it cannot be read, is no stored draft, was changed, or is of a
   *     later version
   */
  public static StoredDraft read(Path file) {
    return read(file, StoredTypes.usual());
  }

  /**
   * Reads a file.
   *
   * @param file a stored draft of at most 25 MB
   * @param types the finishes and alterations that are known
   * @return what was kept
   * @throws DraftingException if it cannot be read, is no stored draft, was changed, or is of a
   *     later version
   */
  public static StoredDraft read(Path file, StoredTypes types) {
    String name = String.valueOf(file.getFileName());
    FileSet.finishBeside(file);
    if (!Files.isRegularFile(file)) {
      throw DraftingException.of(
              Files.exists(file) ? "this is no plain file" : "the file is missing")
          .at(name)
          .accepted("a stored draft");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(name, in.readNBytes(Json.LARGEST_BYTES + 1), types);
    } catch (IOException e) {
      throw DraftingException.of("the file cannot be read").at(name).because(e);
    }
  }

  /**
   * Reads the text of a file with the types of the library.
   *
   * @param json what {@link #toJson} gave
   * @return what was kept
   * @throws DraftingException as {@link #read(Path)} does
   */
  public static StoredDraft parse(String json) {
    return parse(json, StoredTypes.usual());
  }

  /**
   * Reads the text of a file.
   *
   * @param json what {@link #toJson} gave
   * @param types the finishes and alterations that are known
   * @return what was kept
   * @throws DraftingException as {@link #read(Path)} does
   */
  public static StoredDraft parse(String json, StoredTypes types) {
    String name = "stored draft";
    refuseLarge(name, json.length());
    return read(name, json.getBytes(StandardCharsets.UTF_8), types);
  }

  private static void refuseLarge(String file, int size) {
    if (size > Json.LARGEST_BYTES) {
      throw DraftingException.of("the file is too large").at(file).accepted("at most 25 MB");
    }
  }

  private static StoredDraft read(String file, byte[] bytes, StoredTypes types) {
    refuseLarge(file, bytes.length);
    Node whole = NodeParser.parse(file, bytes);
    Reading reading = new Reading(types);
    checkFormat(file, whole);
    if (whole.find(Seal.FIELD).isEmpty()) {
      reading.unsealed();
    } else if (!Seal.isWhole(bytes)) {
      throw DraftingException.of("the file was changed after it was stored")
          .at(file)
          .accepted("the file as it was written; without its last field it is read all the same");
    }
    Draft draft = new DraftFields(reading).read(whole.get("draft"));
    List<Tracing> tracings = whole.get("tracings").list(TracingFields::read);
    Map<String, LayPlan> lays = new LinkedHashMap<>();
    for (Map.Entry<String, Node> lay : whole.get("lays").all().entrySet()) {
      lays.put(lay.getKey(), LayFields.read(draft, lay.getKey(), lay.getValue()));
    }
    reading.unread(whole);
    return new StoredDraft(draft, tracings, lays, reading.findings());
  }

  private static void checkFormat(String file, Node whole) {
    String format = whole.get("format").text();
    int version = whole.get("version").count();
    if (!format.equals(FORMAT)) {
      throw DraftingException.of("this is no stored draft")
          .at(file)
          .value(format)
          .accepted("the format \"" + FORMAT + "\"");
    }
    if (version != VERSION) {
      throw DraftingException.of("the file is of another version")
          .at(file)
          .value(version)
          .accepted("version " + VERSION + "; a later one needs a later library");
    }
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Draft draft, List<Tracing> tracings, Map<String, LayPlan> lays, List<Finding> findings)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      StoredDraft stored = of(draft).withTracings(tracings);
      for (Map.Entry<String, LayPlan> lay : lays.entrySet()) {
        stored = stored.withLay(lay.getKey(), lay.getValue());
      }
      return new StoredDraft(draft, stored.tracings, stored.lays, findings);
    }
  }

  private Object writeReplace() {
    return new Kept(draft, tracings, lays, findings);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a stored draft is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StoredDraft that
        && that.draft.equals(draft)
        && that.tracings.equals(tracings)
        && that.lays.equals(lays)
        && that.findings.equals(findings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(draft, tracings, lays, findings);
  }

  @Override
  public String toString() {
    if (tracings.isEmpty() && lays.isEmpty()) {
      return draft.name() + ", without tracings or lay plans";
    }
    return draft.name()
        + ", with "
        + tracings.size()
        + (tracings.size() == 1 ? " tracing" : " tracings")
        + (lays.isEmpty() ? "" : " and lay plans for " + String.join(", ", lays.keySet()));
  }
}
