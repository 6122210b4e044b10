package dev.drafting.core.cut;

import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SharedPaper;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A pattern ready to be cut: the paper pieces with all allowances, the list of what to cut, and
 * what cannot be cut well.
 *
 * <pre>{@code
 * Point a = new Point(0, 0), b = new Point(200, 0), c = new Point(200, 300), d = new Point(0, 300);
 * Piece half = Piece.of("half", List.of(Edge.of("hem", List.of(a, b)), Edge.of("side", List.of(b, c)), Edge.of("top", List.of(c, d)), Edge.onFold(Curve.line(d, a))));
 * CutPlan plan = CutPlan.of(Pattern.of("tube", List.of(half.withFinish("side", SeamFinish.of(Length.mm(7)))), List.of()));
 * plan.cutList();  // => [half: 1 from body cloth, 300 x 414 mm, cut 1 on the fold]
 * plan.pieces().get(0).lines().get(0);  // => side: join line, 300 mm beside 300 mm of edge
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class CutPlan implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Pattern pattern;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<CutPiece> pieces;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<CutPiece> clothPieces;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  private CutPlan(
      Pattern pattern, List<CutPiece> pieces, List<CutPiece> clothPieces, List<Finding> findings) {
    this.pattern = pattern;
    this.pieces = List.copyOf(pieces);
    this.clothPieces = List.copyOf(clothPieces);
    this.findings = findings;
  }

  /**
   * Adds the allowances of all edges and the notches of gathers and pleats, the places of patches
   * and the strips of plackets, and draws the lines.
   *
   * @param pattern the pattern
   * @return the plan; a piece that has no cut line is missing and has a finding instead
   */
  public static CutPlan of(Pattern pattern) {
    CutFindings findings = new CutFindings();
    findings.checkSeams(pattern);
    Map<String, CutPiece> cut = new LinkedHashMap<>();
    Pattern marked = Assembly.withSeamMarks(pattern).withPatchMarks().withPlacketPieces();
    for (Piece piece : marked.pieces()) {
      addPiece(piece, pattern.version(), cut, findings);
    }
    findings.checkPatches(pattern, cut);
    findings.checkPlackets(pattern, cut);
    List<CutPiece> papers = new ArrayList<>();
    for (CutPiece piece : cut.values()) {
      addPaper(piece, pattern.sharedPapers(), cut, papers, findings);
    }
    return new CutPlan(pattern, papers, List.copyOf(cut.values()), findings.list());
  }

  private static void addPiece(
      Piece piece, String version, Map<String, CutPiece> cut, CutFindings findings) {
    try {
      OffsetResult offset = new CutOutline(piece).cut();
      DerivedLines lines = new DerivedLines(piece, offset);
      findings.checkTrimmings(piece, offset);
      findings.addWithoutRoom(piece, lines.withoutRoom());
      cut.put(piece.name(), CutPiece.of(piece, offset, lines.lines(), version));
    } catch (DraftingException e) {
      findings.addNotCut(piece, e.what());
    }
  }

  private static void addPaper(
      CutPiece piece,
      List<SharedPaper> shared,
      Map<String, CutPiece> cut,
      List<CutPiece> papers,
      CutFindings findings) {
    for (SharedPaper paper : shared) {
      @Nullable CutPiece outer = cut.get(paper.outerPiece());
      @Nullable CutPiece inner = cut.get(paper.innerPiece());
      boolean marked = piece.name().equals(paper.innerPiece());
      if (outer == null || inner == null || !(marked || piece.name().equals(paper.outerPiece()))) {
        continue;
      }
      if (!marked) {
        Transfer transfer = new Transfer(outer, inner);
        if (transfer.reachesOut()) {
          findings.addReachesOut(paper);
        }
        papers.add(transfer.on(paper.name()));
      }
      return;
    }
    papers.add(piece);
  }

  /**
   * The pattern.
   *
   * @return as given
   */
  public Pattern pattern() {
    return pattern;
  }

  /**
   * The paper pieces; two pieces that share a paper count once.
   *
   * @return an unmodifiable list in the order of the pattern's pieces
   */
  public List<CutPiece> pieces() {
    return pieces;
  }

  /**
   * The pieces of cloth, each with its own outline, also those that share a paper.
   *
   * @return an unmodifiable list in the order of the pattern's pieces
   */
  public List<CutPiece> clothPieces() {
    return clothPieces;
  }

  /**
   * What to cut.
   *
   * @return one line for each piece of the pattern
   */
  public List<CutItem> cutList() {
    return clothPieces.stream().map(CutItem::ofPiece).toList();
  }

  /**
   * What cannot be cut well: allowances that are too wide for their curves, sewn edges without an
   * allowance, paper that is too small for the piece marked on it, patches and plackets that reach
   * too far.
   *
   * @return an unmodifiable list
   */
  public List<Finding> findings() {
    return findings;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Pattern pattern) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(pattern);
    }
  }

  private Object writeReplace() {
    return new Kept(pattern);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a cut plan is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CutPlan that && that.pattern.equals(pattern);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pattern);
  }

  @Override
  public String toString() {
    return pattern.name()
        + ": paper "
        + pieces.stream().limit(12).map(CutPiece::name).collect(Collectors.joining(", "))
        + "; "
        + findings.size()
        + (findings.size() == 1 ? " finding" : " findings");
  }
}
