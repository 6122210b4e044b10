package dev.drafting.export.sheet;

import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.List;

/**
 * What a making-up sheet is made of, whatever it is written on.
 *
 * @param <X> what may go wrong while writing
 */
interface SheetWriter<X extends Exception> {
  /** Begins the sheet. */
  void title(String name, List<String> leads) throws X;

  /** Begins a section and ends the one before. */
  void section(String heading) throws X;

  /** A heading within a section. */
  void heading(String text) throws X;

  void paragraph(String text) throws X;

  void bullets(List<String> texts) throws X;

  /** Pairs of a term and what it is. */
  void terms(List<String> pairs) throws X;

  /** A table whose first column heads its rows. */
  void table(String caption, List<String> heads, List<List<String>> rows) throws X;

  /** A table that is only looked at if it is wanted. */
  void asideTable(String summary, List<String> heads, List<List<String>> rows) throws X;

  /** Something to look at, of a kind, and what may be done about it. */
  void finding(boolean note, String kind, String words, List<String> remedies) throws X;

  /** A small picture of each piece with its size in words. */
  void pieces(List<Group> pieces, List<String> sizes) throws X;

  /** Samples of lines and what they mean. */
  void lines(List<StrokeStyle> styles) throws X;

  /** Begins a list of steps. */
  void beginSteps() throws X;

  /** One step with its picture; the caution may be empty. */
  void step(String title, String text, Drawing picture, String caution) throws X;

  /** Ends a list of steps. */
  void endSteps() throws X;

  /** Ends the sheet. */
  void end() throws X;
}
