package dev.drafting.notebooks;

/**
 * What a statement gave.
 *
 * @param text the value as JShell prints it, else what the statement printed; of an exception its
 *     simple name and message
 * @param thrown whether it threw an exception
 */
record Outcome(String text, boolean thrown) {}
