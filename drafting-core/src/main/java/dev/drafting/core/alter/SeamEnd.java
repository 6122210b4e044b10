package dev.drafting.core.alter;

/** An end of a seam, by the grain or by the middle of the piece. */
enum SeamEnd {
  UPPER("upper"),
  LOWER("lower"),
  INNER("inner"),
  OUTER("outer");

  private final String word;

  SeamEnd(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
