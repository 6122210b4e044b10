package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One value of a JSON file, where it stands and the name of its field. It is read as what the
 * caller needs, and whatever does not suit is refused with its place.
 */
final class Entry {
  static final String NAME_ACCEPTED = "1 to 40 letters, digits, spaces, hyphens and apostrophes";
  private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} '\\-]{0,39}");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,9}(?:\\.\\d{1,9})?");
  private static final Pattern SHARE = Pattern.compile("(\\S+)\\s*%");

  private final String where;
  private final String path;
  private final Object content;
  private final boolean isText;

  private Entry(String where, String path, Object content, boolean isText) {
    this.where = where;
    this.path = path;
    this.content = content;
    this.isText = isText;
  }

  static Entry ofText(String where, String path, String text) {
    return new Entry(where, path, text, true);
  }

  /** A number, true or false, as it stands in the file. */
  static Entry ofOther(String where, String path, String text) {
    return new Entry(where, path, text, false);
  }

  static Entry ofList(String where, String path, List<Entry> list) {
    return new Entry(where, path, List.copyOf(list), false);
  }

  static Entry ofFields(String where, String path, Map<String, Entry> fields) {
    return new Entry(where, path, fields, false);
  }

  /** A fault of this value: what is wrong, with the place and the value. */
  DraftingException fault(String what) {
    return place(DraftingException.of(what).value(shown()));
  }

  /** The same fault with this place in front. */
  DraftingException place(DraftingException fault) {
    return fault.at(path.isEmpty() ? where : where + ", field " + path);
  }

  /** What the work gives; a fault in it gets this place. */
  <T> T placed(Supplier<T> work) {
    try {
      return work.get();
    } catch (DraftingException e) {
      throw place(e);
    }
  }

  private String shown() {
    if (content instanceof List<?> list) {
      return "a list of " + list.size();
    }
    String text = content instanceof Map ? "an object" : content.toString();
    return text.isBlank() ? "an empty text" : text;
  }

  /** A text of 1 to {@code longest} characters. */
  String text(int longest) {
    if (!isText) {
      throw fault("this is no text").accepted("a text between double quotes");
    }
    String text = content.toString().strip();
    if (text.isEmpty() || text.length() > longest) {
      throw fault("the text is empty or too long").accepted("1 to " + longest + " characters");
    }
    return text;
  }

  /** A name of a piece, edge, seam, fabric or make. */
  String name() {
    String name = content.toString().strip();
    if (!isText || !isName(name)) {
      throw fault("this cannot be a name").accepted(NAME_ACCEPTED);
    }
    return name;
  }

  static boolean isName(String text) {
    return NAME.matcher(text).matches();
  }

  /** A length with its unit, both bounds accepted. */
  Length length(Length least, Length most) {
    String accepted =
        String.format(
            Locale.ROOT,
            "a length with its unit from %s to %s, such as \"%s\"",
            shown(least),
            shown(most),
            example(least, most));
    if (!isText) {
      throw fault("a length is a text with its unit").accepted(accepted);
    }
    Length length = placed(() -> Length.parse(content.toString()));
    if (length.compareTo(least) < 0 || length.compareTo(most) > 0) {
      throw fault("the length is out of range").accepted(accepted);
    }
    return length;
  }

  private static String example(Length least, Length most) {
    Length usual = Length.mm(7);
    boolean suits = usual.compareTo(least) >= 0 && usual.compareTo(most) <= 0;
    return shown(suits ? usual : Length.cm(60));
  }

  private static String shown(Length length) {
    boolean isShort = length.abs().compareTo(Length.cm(10)) <= 0;
    return length.text(isShort ? LengthUnit.MM : LengthUnit.CM);
  }

  /** A share in per cent, "30 %" being 0.3; both bounds accepted, in per cent. */
  double share(int least, int most) {
    String accepted = "a text such as \"5 %\", from " + least + " % to " + most + " %";
    Matcher match = SHARE.matcher(content.toString().strip());
    if (!isText || !match.matches()) {
      throw fault("a share is a text with a per cent sign").accepted(accepted);
    }
    BigDecimal percent = number(match.group(1), accepted);
    if (percent.doubleValue() < least || percent.doubleValue() > most) {
      throw fault("the share is out of range").accepted(accepted);
    }
    return percent.movePointLeft(2).doubleValue();
  }

  /** A plain number, both bounds accepted. */
  double number(double least, double most) {
    String accepted = plain(least) + " to " + plain(most) + ", without quotes";
    if (isText || !(content instanceof String)) {
      throw fault("this is no number").accepted(accepted);
    }
    double number = number(content.toString(), accepted).doubleValue();
    if (number < least || number > most) {
      throw fault("the number is out of range").accepted(accepted);
    }
    return number;
  }

  /** A whole number, both bounds accepted. */
  int count(int least, int most) {
    double count = number(least, most);
    if (count != Math.rint(count)) {
      throw fault("this is no whole number").accepted(least + " to " + most);
    }
    return (int) count;
  }

  private BigDecimal number(String text, String accepted) {
    if (!NUMBER.matcher(text).matches()) {
      throw fault(text.contains(",") ? "the number has a decimal comma" : "this is no number")
          .accepted(accepted);
    }
    return new BigDecimal(text);
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** A text with a number and this unit, both bounds accepted. */
  double quantity(String unit, int least, int most) {
    String accepted = "a text such as \"" + least + " " + unit + "\", to " + most + " " + unit;
    String text = content.toString().strip().replace('²', '2');
    if (!isText || !text.endsWith(unit)) {
      throw fault("the unit is missing or unknown").accepted(accepted);
    }
    double number =
        number(text.substring(0, text.length() - unit.length()).strip(), accepted).doubleValue();
    if (number < least || number > most) {
      throw fault("the quantity is out of range").accepted(accepted);
    }
    return number;
  }

  /** True or false. */
  boolean truth() {
    if (isText || !(content.equals("true") || content.equals("false"))) {
      throw fault("this is neither true nor false").accepted("true or false, without quotes");
    }
    return content.equals("true");
  }

  /** One of the words that are known here, whether in capital letters or not. */
  <T> T choice(String what, Map<String, T> known) {
    String text = isText ? content.toString().strip() : "";
    for (Map.Entry<String, T> choice : known.entrySet()) {
      if (choice.getKey().equalsIgnoreCase(text)) {
        return choice.getValue();
      }
    }
    throw fault("the " + what + " is unknown").accepted(String.join(", ", known.keySet()));
  }

  boolean isList() {
    return content instanceof List;
  }

  /** A list with a number of values, both bounds accepted. */
  List<Entry> list(int fewest, int most) {
    if (!(content instanceof List<?> list)) {
      throw fault("this is no list").accepted("values between [ and ]");
    }
    if (list.size() < fewest || list.size() > most) {
      throw fault("the list is too short or too long").accepted(fewest + " to " + most + " values");
    }
    return list.stream().map(Entry.class::cast).toList();
  }

  /** An object that has no other fields than these. */
  Fields fields(String... known) {
    Fields fields = anyFields();
    fields.require(List.of(known));
    return fields;
  }

  /** The fields before it is known which of them are accepted. */
  Fields anyFields() {
    return Fields.of(this, raw());
  }

  @SuppressWarnings("unchecked") // the only maps are those of ofFields
  private Map<String, Entry> raw() {
    if (!(content instanceof Map)) {
      throw fault("this is no object").accepted("fields between { and }");
    }
    return (Map<String, Entry>) content;
  }
}
