package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A drawing at true size: named groups on one plane, in mm, y up. Each group is a piece; formats
 * that need several sheets give every group sheets of its own.
 *
 * <pre>{@code
 * Curve square = Curve.polyline(
 *     new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100), new Point(0, 0));
 * Stroke outline = new Stroke(StrokeStyle.CUT_LINE, "", square);
 * Drawing drawing = Drawing.of("test", new Group("pocket", List.of(outline)));
 * drawing;  // => test: pocket (1 lines, 0 texts), 100 x 100 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Drawing implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String title;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Group> groups;

  private Drawing(String title, List<Group> groups) {
    this.title = Objects.requireNonNull(title, "title");
    this.groups = groups;
  }

  /**
   * A drawing of groups that lie where they are.
   *
   * @param title what the drawing shows, for instance the name of the garment
   * @param groups at least one
   * @return the drawing
   * @throws DraftingException if there is no group
   */
  public static Drawing of(String title, List<Group> groups) {
    if (groups.isEmpty()) {
      throw DraftingException.of("a drawing is empty").at(title).accepted("one group or more");
    }
    return new Drawing(Lettering.oneLine(title), List.copyOf(groups));
  }

  /**
   * A drawing of groups that lie where they are.
   *
   * @param title what the drawing shows
   * @param groups at least one
   * @return the drawing
   * @throws DraftingException if there is no group
   */
  public static Drawing of(String title, Group... groups) {
    return of(title, List.of(groups));
  }

  /**
   * A drawing of groups put next to each other from left to right, their lower edges on y = 0.
   *
   * @param title what the drawing shows
   * @param groups at least one
   * @param gap the room between them
   * @return the drawing
   * @throws DraftingException if there is no group
   */
  public static Drawing sideBySide(String title, List<Group> groups, Length gap) {
    List<Group> row = new ArrayList<>();
    double x = 0;
    for (Group group : groups) {
      Box box = group.bounds();
      row.add(group.map(Transform.translation(new Vector(x - box.minX(), -box.minY()))));
      x += box.width().plus(gap).toMm();
    }
    return of(title, row);
  }

  /**
   * This drawing with one more group on top.
   *
   * @param group lies where it is
   * @return the drawing
   */
  public Drawing with(Group group) {
    return new Drawing(title, Stream.concat(groups.stream(), Stream.of(group)).toList());
  }

  /**
   * What the drawing shows.
   *
   * @return one line of text
   */
  public String title() {
    return title;
  }

  /**
   * The groups from the lowest to the topmost.
   *
   * @return one group a piece
   */
  public List<Group> groups() {
    return groups;
  }

  /**
   * The room the drawing takes, line widths left out.
   *
   * @return the smallest upright box around it, in mm
   */
  public Box bounds() {
    return groups.stream().map(Group::bounds).reduce(Box::union).orElseThrow();
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(String title, List<Group> groups) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(title, groups);
    }
  }

  private Object writeReplace() {
    return new Kept(title, groups);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a drawing is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Drawing that && title.equals(that.title) && groups.equals(that.groups);
  }

  @Override
  public int hashCode() {
    return Objects.hash(title, groups);
  }

  @Override
  public String toString() {
    Box box = bounds();
    String names = groups.stream().limit(8).map(Group::toString).collect(Collectors.joining(", "));
    return String.format(
        Locale.ROOT,
        "%s: %s%s, %.0f x %.0f mm",
        title,
        names,
        groups.size() > 8 ? " and " + (groups.size() - 8) + " more" : "",
        box.width().toMm(),
        box.height().toMm());
  }
}
