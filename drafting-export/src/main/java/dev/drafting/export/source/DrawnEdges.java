package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every path is one stroke; its id says of which piece and edge: {@code front.side}, with an
 * underline for a space, and with a number after a second point where an edge was drawn twice:
 * {@code back.side.2}. A path whose id is a piece alone runs past the corners of the piece.
 */
final class DrawnEdges implements SvgNames {
  private static final Pattern ID = Pattern.compile("([^.]+)(?:\\.([^.]+)(?:\\.\\d{1,3})?)?");

  @Override
  public Optional<Stroke> stroke(String id, String file, int line) {
    Matcher names = ID.matcher(id.replace('_', ' '));
    String edge = names.matches() && names.group(2) != null ? names.group(2) : "";
    boolean named =
        names.matches()
            && Entry.isName(names.group(1))
            && (names.group(2) == null || Entry.isName(edge));
    if (!named) {
      throw DraftingException.of("a path does not say which edge it is")
          .value(id.isEmpty() ? "no id" : id)
          .accepted("an id of piece and edge, such as front.neck, or of a piece drawn in one go");
    }
    return Optional.of(new Stroke(file, names.group(1), edge, line));
  }

  @Override
  public String wanted() {
    return "a path for each edge, its id such as front.neck";
  }
}
