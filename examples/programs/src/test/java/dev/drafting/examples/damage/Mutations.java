package dev.drafting.examples.damage;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/** Damages the text of a file in one of the ways in which files get damaged. */
final class Mutations {
  private static final String[] WORDS = {
    "",
    "0",
    "-1",
    "1e300",
    "NaN",
    "Infinity",
    "-0.0",
    "0.000000001",
    "999999999",
    "9007199254740993",
    "1e400",
    "4.9e-324",
    "250",
    "12.5",
    "mm",
    "cm",
    "in",
    "px",
    "fold",
    "front",
    "back",
    "hem",
    "side",
    "neck",
    "armhole",
    "rib",
    "body",
    "whole",
    "pairs",
    "single",
    "true",
    "false",
    "null",
    "name",
    "cloth",
    "../..",
    "/etc/passwd",
    "C:\\\\nul",
    "file:/etc/"
  };
  private static final String[] SIGNS = {
    "\"",
    "{",
    "[",
    "}",
    "]",
    ",",
    ":",
    "%",
    "0,5",
    "\uFEFF",
    "\r",
    "\n",
    "\t",
    "\u0000",
    "\u2028",
    "&",
    "<",
    " id='a' ",
    "' id='a"
  };
  private static final String[] REPEATED = {
    "[",
    "{\"a\":",
    "\"",
    "9",
    ".",
    "-",
    "(",
    "<g>",
    "<metadata>",
    "&a;",
    "a",
    "\n",
    "1,",
    "L 1 1 ",
    "../"
  };
  private static final String[][] BRACKETS = {
    {"[", "]"}, {"{\"a\":", "}"}, {"<g>", "</g>"}, {"<metadata>", "</metadata>"}, {"\"", "\""}
  };
  private static final String ENTITIES =
      "<!DOCTYPE svg [<!ENTITY a 'M1 1'><!ENTITY b '&a;&a;&a;'><!ENTITY c SYSTEM 'file:/etc/'>]>";
  private static final int MOST_DOUBLINGS = 15;
  private static final int MOST_DOUBLINGS_OF_LINE = 5;
  private static final int MOST_DEEP = 10;

  /** Unlike that of others, its numbers are not alike for seeds in a row. */
  private final SplittableRandom random;

  Mutations(long seed) {
    random = new SplittableRandom(seed);
  }

  String text(String text) {
    return once(text);
  }

  byte[] damage(String text) {
    String damaged = text;
    for (int i = random.nextInt(4) == 0 ? 2 : 0; i >= 0; i--) {
      damaged = once(damaged);
    }
    byte[] bytes = damaged.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(20) == 0 && bytes.length > 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return random.nextInt(30) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)) : bytes;
  }

  private String once(String text) {
    return switch (random.nextInt(15)) {
      case 0 -> replaceWord(text, SIGNS[random.nextInt(SIGNS.length)]);
      case 1 -> spliced(text);
      case 2 -> deleted(text);
      case 3 -> lines(text);
      case 4 -> replaceWord(text, String.valueOf((random.nextDouble() - 0.5) * 200));
      case 10 -> replaceWord(text, repeated());
      case 11 -> twice(text);
      case 12 -> nested(text);
      case 13 -> twofold(text);
      case 14 -> ENTITIES + replaceWord(text, random.nextBoolean() ? "&b;" : "&c;");
      case 5, 6 -> replaceWord(text, word(text));
      default -> replaceWord(text, WORDS[random.nextInt(WORDS.length)]);
    };
  }

  /** A run of letters, digits and signs that is a value or a name. */
  private int[] wordAt(String text) {
    int from = text.isEmpty() ? 0 : random.nextInt(text.length());
    while (from > 0 && isWord(text.charAt(from - 1))) {
      from--;
    }
    int to = from;
    while (to < text.length() && isWord(text.charAt(to))) {
      to++;
    }
    return new int[] {from, to};
  }

  private static boolean isWord(char c) {
    return Character.isLetterOrDigit(c) || c == '.' || c == '-';
  }

  private String word(String text) {
    int[] at = wordAt(text);
    return text.substring(at[0], at[1]);
  }

  private String replaceWord(String text, String by) {
    int[] at = wordAt(text);
    return text.substring(0, at[0]) + by + text.substring(at[1]);
  }

  private String spliced(String text) {
    int from = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + random.nextInt(200));
    int at = random.nextInt(text.length() + 1);
    return text.substring(0, at) + text.substring(from, to) + text.substring(at);
  }

  /** From one to tens of thousands of something that opens, nests or counts. */
  private String repeated() {
    return REPEATED[random.nextInt(REPEATED.length)].repeat(1 << random.nextInt(MOST_DOUBLINGS));
  }

  /** A line, many times over. */
  private String twice(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text;
    }
    int at = random.nextInt(lines.size());
    lines.set(
        at, (lines.get(at) + "\n").repeat(2 << random.nextInt(MOST_DOUBLINGS_OF_LINE)).strip());
    return String.join("\n", lines) + "\n";
  }

  /** A line or a value, up to a thousand levels down; what was opened is closed. */
  private String nested(String text) {
    String[] bracket = BRACKETS[random.nextInt(BRACKETS.length)];
    int deep = 1 << random.nextInt(MOST_DEEP + 1);
    int[] at = random.nextBoolean() ? wordAt(text) : lineAt(text);
    String inside = text.substring(at[0], at[1]);
    String whole = bracket[0].repeat(deep) + inside + bracket[1].repeat(deep);
    return text.substring(0, at[0]) + whole + text.substring(at[1]);
  }

  private int[] lineAt(String text) {
    int at = random.nextInt(text.length() + 1);
    int end = text.indexOf('\n', at);
    return new int[] {text.lastIndexOf('\n', at - 1) + 1, end < 0 ? text.length() : end};
  }

  /** A line and what it says a second time: in JSON a key that is there already. */
  private String twofold(String text) {
    int[] at = lineAt(text);
    String line = text.substring(at[0], at[1]);
    String first = line.endsWith(",") ? line.substring(0, line.length() - 1) : line;
    return text.substring(0, at[0]) + first + "," + line + text.substring(at[1]);
  }

  private String deleted(String text) {
    int from = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + random.nextInt(60));
    return text.substring(0, from) + text.substring(to);
  }

  private String lines(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text;
    }
    int a = random.nextInt(lines.size());
    int b = random.nextInt(lines.size());
    switch (random.nextInt(3)) {
      case 0 -> lines.remove(a);
      case 1 -> Collections.swap(lines, a, b);
      default -> lines.add(a, lines.get(b));
    }
    return String.join("\n", lines) + "\n";
  }
}
