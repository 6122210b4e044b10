package dev.drafting.export.sheet;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The tape of those who work by a making-up sheet, in whose units it is written.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * MakingUpSheet.of(top).withTape(Tape.INCH);  // => making-up sheet of Sleeveless top, in inches
 * Export.of(top).sheet(Tape.CM).sheet(Paper.LETTER, Tape.INCH);  // => Sleeveless top to -making-up.html, -making-up-letter.pdf
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public enum Tape {
  /** Centimetres with inches beside them, for a tape that has both. */
  BOTH,
  /** Centimetres, small lengths in millimetres. */
  CM,
  /**
   * Inches to the eighth. Sentences keep their metric amounts and have the inches in brackets,
   * since machines count stitches in millimetres; cloth and thread are in yards, rounded up.
   */
  INCH;

  private static final char NO_BREAK = '\u00a0';

  /** A length, number and unit on one line. */
  String length(Length length) {
    return switch (this) {
      case BOTH -> cm(length) + " (" + inches(length) + ")";
      case CM -> cm(length);
      case INCH -> inches(length);
    };
  }

  /** What this tape adds to the name of a sheet. */
  String said() {
    return switch (this) {
      case BOTH -> "";
      case CM -> ", in centimetres";
      case INCH -> ", in inches";
    };
  }

  /** What stands above {@link #columns}. */
  List<String> heads() {
    return switch (this) {
      case BOTH -> List.of("cm", "in");
      case CM -> List.of("cm");
      case INCH -> List.of("in");
    };
  }

  /** A row that begins with a name, a length in a column for each unit. */
  List<String> columns(String name, Length length) {
    List<String> row = new ArrayList<>(List.of(name));
    if (this != INCH) {
      row.add(cm(length));
    }
    if (this != CM) {
      row.add(inches(length));
    }
    return row;
  }

  /** A sentence, with inches behind its metric amounts if the tape shows nothing else. */
  String words(String sentence) {
    return this == INCH ? MetricWords.withInches(sentence) : sentence;
  }

  List<String> words(List<String> sentences) {
    return sentences.stream().map(this::words).toList();
  }

  private static String cm(Length length) {
    return length.text(LengthUnit.CM, 1).replace(' ', NO_BREAK);
  }

  static String inches(Length length) {
    return length.toFraction(8).replace(' ', NO_BREAK);
  }
}
