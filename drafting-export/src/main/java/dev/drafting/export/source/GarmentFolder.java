package dev.drafting.export.source;

import dev.drafting.core.Stable;
import dev.drafting.core.assembly.PatternTruing;
import dev.drafting.core.assembly.TruedPattern;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.core.trace.Truing;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.BandFinish;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder with a garment: {@code tracing.csv}, the points that were traced round it, and {@code
 * garment.json}, which says what the pieces are, how they are sewn and of which fabrics they are
 * made.
 *
 * <p>Whatever cannot be drafted is refused with the file, the line, the field, the value and what
 * would be accepted. Every file is read within stated limits of size and depth, so that no file can
 * exhaust memory.
 *
 * <pre>{@code
 * Garment vest = GarmentFolder.read(Path.of("examples/programs/garments/vest"));
 * vest;  // => Boathouse vest: pieces front, back; makes A cotton jersey, B interlock, C pique
 * vest.make("A cotton jersey").headOpening().get().passes();  // => true
 * vest.make("C pique").headOpening().get().passes();  // => false
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class GarmentFolder {
  /** The name of the file with the traced points. */
  public static final String TRACING = "tracing.csv";

  /** The name of the file with the drawn outlines, which may take the place of traced points. */
  public static final String DRAWING = "tracing.svg";

  /** The name of the file that describes the garment. */
  public static final String DESCRIPTION = "garment.json";

  private static final Length MOST_WANDER = Length.mm(10);
  private static final int MOST_BENT = 45;
  private static final Length MOST_EVENED = Length.mm(20);
  private static final int LONGEST_ABOUT = 2_000;

  private GarmentFolder() {}

  /**
   * Reads the garment in a folder, trues its tracing and drafts each make.
   *
   * @param folder a folder that holds {@code tracing.csv} and {@code garment.json}
   * @return the garment
   * @throws DraftingException if a file is missing or anything in it cannot be drafted
   */
  public static Garment read(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw DraftingException.of("the folder of the garment is missing")
          .value(folder)
          .accepted("a folder with " + TRACING + " and " + DESCRIPTION);
    }
    Path drawing = folder.resolve(DRAWING);
    boolean drawn = Files.exists(drawing);
    if (drawn && Files.exists(folder.resolve(TRACING))) {
      throw DraftingException.of("the garment is traced and drawn")
          .at(StrictText.name(folder))
          .accepted("either " + TRACING + " or " + DRAWING);
    }
    List<Stroke> strokes =
        drawn ? SvgFile.read(drawing, new DrawnEdges()) : TracingFile.read(folder.resolve(TRACING));
    return garment(JsonFile.read(folder.resolve(DESCRIPTION)), strokes);
  }

  private static Garment garment(Entry whole, List<Stroke> strokes) {
    Fields fields =
        whole.fields(
            "name",
            "about",
            "sheet",
            "wander",
            "evened",
            "smoothed",
            "pieces",
            "seams",
            "patches",
            "plackets",
            "finishes",
            "fabrics",
            "original",
            "wearer",
            "sewing",
            "strips",
            "sewn",
            "makes");
    String name = fields.get("name").name();
    String about = fields.or("about", "", e -> e.text(LONGEST_ABOUT));
    Optional<Length> wander =
        fields.find("wander").map(entry -> entry.length(Length.ZERO, MOST_WANDER));
    SheetReader.Corrected drawn = SheetReader.read(fields, strokes);
    TracingReader read = new TracingReader(drawn.strokes());
    List<PieceReader.Source> sources = PieceReader.read(fields.get("pieces"), read);
    List<Finding> findings =
        Stream.concat(drawn.findings().stream(), read.findings().stream()).toList();
    List<Tracing> tracings = sources.stream().map(PieceReader.Source::tracing).toList();
    EdgeNames edges = new EdgeNames(tracings);
    SeamReader seams =
        SeamReader.read(
            fields.get("seams"), edges, fields.find("sewing").map(SewingReader::machines));
    Map<EdgeRef, Finish> finishes = FinishReader.finishes(fields.get("finishes"), edges);
    PatchReader patches = PatchReader.read(fields, edges);
    Map<EdgeRef, Finish> sewn = new LinkedHashMap<>(patches.finishes());
    sewn.putAll(seams.finishes());
    requireOneEach(fields, edges, sewn, finishes);
    List<TruedPiece> trued = sources.stream().map(source -> trued(source, wander)).toList();
    List<Piece> pieces = pieces(sources, trued);
    Pattern plain = whole.placed(() -> Pattern.of(name, pieces, seams.seams()));
    Pattern traced = whole.placed(() -> finished(plain, sewn, finishes));
    Length evened = fields.or("evened", Length.ZERO, e -> e.length(Length.ZERO, MOST_EVENED));
    Angle smoothed = Angle.degrees(fields.or("smoothed", 0.0, e -> e.quantity("°", 0, MOST_BENT)));
    TruedPattern together = whole.placed(() -> together(traced, sources, trued, evened, smoothed));
    Pattern pattern = PlacketReader.on(patches.on(together.pattern()), fields, edges);
    Map<String, Draft> makes =
        DraftReader.makes(fields, pattern, cloths(sources, finishes), openings(finishes));
    return new Garment(about, tracings, findings, trued, together, pattern, makes);
  }

  /**
   * With what was stretched in wear taken back, seams that nearly match made to match, and edges
   * smooth where they cross seams.
   */
  private static TruedPattern together(
      Pattern traced,
      List<PieceReader.Source> sources,
      List<TruedPiece> trued,
      Length evened,
      Angle smoothed) {
    Map<EdgeRef, Length> before = new LinkedHashMap<>();
    for (PieceReader.Source source : sources) {
      Piece piece = traced.piece(source.tracing().piece());
      before.putAll(source.shape().lengthsBeforeWear(piece));
    }
    Reshaping unworn = Reshaping.of(traced);
    for (Map.Entry<EdgeRef, Length> edge : before.entrySet()) {
      unworn = unworn.withLength(edge.getKey(), edge.getValue());
    }
    Pattern pattern = before.isEmpty() ? traced : unworn.result();
    PatternTruing truing = PatternTruing.of(pattern).evened(evened).smoothed(smoothed);
    for (EdgeRef edge : before.keySet()) {
      truing = truing.keepingLengthOf(edge);
    }
    for (TruedPiece piece : trued) {
      truing = truing.withWandering(piece.piece().name(), piece.report().noise());
    }
    return truing.result();
  }

  /** Every edge is either sewn to another one or finished. */
  private static void requireOneEach(
      Fields fields, EdgeNames edges, Map<EdgeRef, Finish> sewn, Map<EdgeRef, Finish> finished) {
    for (EdgeRef edge : edges.all()) {
      if (sewn.containsKey(edge) == finished.containsKey(edge)) {
        boolean both = sewn.containsKey(edge);
        throw fields
            .get("finishes")
            .place(
                DraftingException.of(
                        both
                            ? "the edge is in a seam and has a finish as well"
                            : "the edge has neither a seam nor a finish")
                    .value(edge)
                    .accepted("a seam or a finish, \"raw\" if it is left as it is cut"));
      }
    }
  }

  private static TruedPiece trued(PieceReader.Source source, Optional<Length> wander) {
    try {
      Truing plain = source.shape().of(Truing.of(source.tracing()));
      return wander.map(plain::withSmoothing).orElse(plain).result();
    } catch (DraftingException e) {
      throw e.at(source.lines());
    }
  }

  private static List<Piece> pieces(List<PieceReader.Source> sources, List<TruedPiece> trued) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < sources.size(); i++) {
      PieceReader.Source source = sources.get(i);
      Piece piece = source.shape().of(trued.get(i).piece());
      pieces.add(
          source
              .entry()
              .placed(() -> piece.withCutting(source.cutting()).withCloth(source.cloth())));
    }
    return pieces;
  }

  private static Pattern finished(
      Pattern plain, Map<EdgeRef, Finish> sewn, Map<EdgeRef, Finish> finished) {
    Map<EdgeRef, Finish> all = new LinkedHashMap<>(sewn);
    all.putAll(finished);
    Pattern pattern = plain;
    for (Map.Entry<EdgeRef, Finish> edge : all.entrySet()) {
      pattern = pattern.withFinish(edge.getKey(), edge.getValue());
    }
    return pattern;
  }

  private static Set<String> cloths(
      List<PieceReader.Source> sources, Map<EdgeRef, Finish> finishes) {
    Set<String> cloths = new LinkedHashSet<>();
    sources.forEach(source -> cloths.add(source.cloth()));
    finishes.values().stream()
        .filter(BandFinish.class::isInstance)
        .forEach(finish -> cloths.add(((BandFinish) finish).cloth()));
    return cloths;
  }

  private static Set<String> openings(Map<EdgeRef, Finish> finishes) {
    Set<String> openings = new LinkedHashSet<>();
    finishes.forEach(
        (edge, finish) -> {
          if (finish instanceof BandFinish) {
            openings.add(edge.edge());
          }
        });
    return openings;
  }
}
