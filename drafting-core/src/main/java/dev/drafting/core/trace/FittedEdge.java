package dev.drafting.core.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One edge of the outline before its corners are known, with the strokes it was fitted to. */
record FittedEdge(
    String name,
    Ends ends,
    EdgeFit fit,
    List<TracedSide> sides,
    @Nullable Lopsidedness lopsidedness) {}
