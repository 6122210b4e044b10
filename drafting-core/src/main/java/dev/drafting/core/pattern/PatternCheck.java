package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What the pieces and seams of one pattern must be to belong together. */
final class PatternCheck {
  private PatternCheck() {}

  static void check(Pattern pattern) {
    if (pattern.pieces().isEmpty()) {
      throw DraftingException.of("the pattern has no pieces").value(0).accepted("one or more");
    }
    refuseSameNames("pieces", pattern.pieces(), Piece::name);
    refuseSameNames("seams", pattern.seams(), Seam::name);
    Map<EdgeRef, String> sewn = new HashMap<>();
    for (Seam seam : pattern.seams()) {
      try {
        checkSeam(pattern, seam, sewn);
      } catch (DraftingException e) {
        throw e.at("seam " + seam.name());
      }
    }
    pattern.seams().stream().filter(Seam::isLapped).forEach(lap -> refuseLoose(lap, sewn));
    checkSharedPapers(pattern);
    PatchCheck.check(pattern);
    PlacketCheck.check(pattern);
  }

  private static void refuseLoose(Seam lap, Map<EdgeRef, String> sewn) {
    for (EdgeRef over : lap.first()) {
      if (!sewn.containsKey(over)) {
        throw DraftingException.of("no seam catches the lap")
            .at("seam " + lap.name())
            .value(over)
            .accepted("an upper edge that is sewn in a seam");
      }
    }
  }

  private static <T> void refuseSameNames(String what, List<T> list, Function<T, String> name) {
    Set<String> names = new HashSet<>();
    for (T one : list) {
      if (!names.add(name.apply(one))) {
        throw DraftingException.of("two " + what + " have the same name")
            .value(name.apply(one))
            .accepted("a name of its own for each");
      }
    }
  }

  private static void checkSeam(Pattern pattern, Seam seam, Map<EdgeRef, String> sewn) {
    List<EdgeRef> all = new ArrayList<>(seam.isLapped() ? List.of() : seam.first());
    if (!seam.isMirrored()) {
      all.addAll(seam.second());
    }
    for (EdgeRef ref : all) {
      if (pattern.edge(ref).isOnFold()) {
        throw DraftingException.of("an edge on the fold is not sewn")
            .value(ref)
            .accepted("an edge that is cut");
      }
      @Nullable String other = sewn.put(ref, seam.name());
      if (other != null) {
        throw DraftingException.of("the edge is sewn twice")
            .value(ref + " in seam " + other)
            .accepted("an edge in one seam at most");
      }
    }
    if (seam.isMirrored()) {
      refuseSingle(pattern.piece(seam.first().get(0).piece()));
    }
  }

  private static void refuseSingle(Piece piece) {
    if (piece.cutting().kind() == Cutting.Kind.SINGLE) {
      throw DraftingException.of("the piece has no mirror image to be sewn to")
          .value(piece.name() + ", " + piece.cutting())
          .accepted("a piece on the fold or a pair");
    }
  }

  private static void checkSharedPapers(Pattern pattern) {
    Set<String> sharing = new HashSet<>();
    for (SharedPaper paper : pattern.sharedPapers()) {
      for (String name : List.of(paper.outerPiece(), paper.innerPiece())) {
        Piece piece = pattern.piece(name);
        if (!sharing.add(piece.name())) {
          throw DraftingException.of("a piece shares two papers")
              .at(paper.name())
              .value(name)
              .accepted("one shared paper for each piece");
        }
      }
      refuseFoldMismatch(pattern, paper);
    }
  }

  private static void refuseFoldMismatch(Pattern pattern, SharedPaper paper) {
    boolean outer = pattern.piece(paper.outerPiece()).isOnFold();
    boolean inner = pattern.piece(paper.innerPiece()).isOnFold();
    if (outer != inner) {
      throw DraftingException.of("only one of the two pieces lies on the fold")
          .at(paper.name())
          .value(outer ? paper.outerPiece() : paper.innerPiece())
          .accepted("both on the fold, or neither");
    }
  }
}
