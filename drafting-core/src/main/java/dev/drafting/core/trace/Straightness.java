package dev.drafting.core.trace;

/** Whether the maker has said what an edge is. */
enum Straightness {
  JUDGED,
  STRAIGHT,
  CURVED
}
