package dev.drafting.export.source;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Of the drawings of this library the cut lines, and the folds that close them. */
final class DrawnCutLines implements SvgNames {
  static final String CUT_LINE = "cut line";
  static final String FOLD = "fold";

  /** Points of a cut line at which it may turn sharply, where the file tells them. */
  static final String CORNERS = "corners";

  private static final Map<String, String> ENDINGS =
      Map.of(".cut-line.cut-line", CUT_LINE, ".fold.fold-of-the-cloth", FOLD);

  /** The names of pieces as they were given, by the ids of their groups. */
  private final Map<String, String> pieces = new HashMap<>();

  @Override
  public void enter(String id, String pieceName) {
    if (!pieceName.isEmpty()) {
      pieces.put(id, pieceName);
    }
  }

  @Override
  public Optional<Stroke> stroke(String id, String file, int line) {
    for (Map.Entry<String, String> ending : ENDINGS.entrySet()) {
      if (id.endsWith(ending.getKey())) {
        String group = id.substring(0, id.length() - ending.getKey().length());
        String piece = pieces.getOrDefault(group, group);
        return Optional.of(new Stroke(file, piece, ending.getValue(), line));
      }
    }
    return Optional.empty();
  }

  @Override
  public String wanted() {
    return "the cut lines of pieces, as this library draws them";
  }
}
