package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.WrittenFile;
import dev.drafting.export.pdf.Paper;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A garment of many pieces in many sizes, and all of its files. */
final class ManyPieces {
  /** Small sizes, so that no sum of lengths comes near the 100 m that a length goes up to. */
  private static final double SMALLEST = 0.5;

  private static final double STEP = 0.02;

  private final int pieces;

  ManyPieces(int pieces) {
    this.pieces = pieces;
  }

  /**
   * Writes all files of every size and says how much memory was taken at most.
   *
   * @param arguments how many pieces, how many sizes
   */
  public static void main(String[] arguments) throws IOException {
    int sizes = Integer.parseInt(arguments[1]);
    new ManyPieces(Integer.parseInt(arguments[0])).write(sizes);
  }

  /** Every size in a folder of its own, which is emptied again. */
  void write(int sizes) throws IOException {
    Path folder = Files.createTempDirectory("many-pieces");
    for (int size = 0; size < sizes; size++) {
      Export export = Export.of(draft(size)).pdf(Paper.A4).svg().sheet().dxf().hpgl().csv().store();
      for (WrittenFile file : export.to(folder.resolve("size-" + size), Progress.none())) {
        Files.delete(file.path());
      }
    }
  }

  /**
   * The front and the back of the demo vest again and again, with a plain allowance at every edge,
   * each size larger by 2 % of the vest.
   */
  private Draft draft(int size) {
    Draft vest = Vest.draft();
    Transform larger = Transform.scaling(SMALLEST + STEP * size);
    List<Piece> bodies = Stream.of("front", "back").map(vest.pattern()::piece).toList();
    List<Piece> many = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      Piece body = bodies.get(i % bodies.size());
      List<Edge> edges = body.edges().stream().map(edge -> mapped(edge, larger)).toList();
      many.add(Piece.of(body.name() + " " + (i + 1), edges).withCutting(body.cutting()));
    }
    Draft draft = Draft.of(Pattern.of("many", many, List.of()));
    for (String cloth : vest.fabrics().keySet()) {
      draft = draft.withFabric(cloth, vest.fabric(cloth));
    }
    return draft;
  }

  private static Edge mapped(Edge edge, Transform larger) {
    Curve curve = edge.curve().map(larger);
    return edge.isOnFold()
        ? Edge.onFold(curve)
        : Edge.of(edge.name(), curve).withFinish(SeamFinish.of(Length.mm(7)));
  }
}
