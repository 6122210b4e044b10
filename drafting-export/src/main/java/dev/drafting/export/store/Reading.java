package dev.drafting.export.store;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is known while a file is read, and what has been found so far. */
final class Reading {
  private static final String KNOWING_TYPES = "Read the file with types that know it.";

  private final StoredTypes types;
  private final Set<Finding> findings = new LinkedHashSet<>();

  Reading(StoredTypes types) {
    this.types = types;
  }

  StoredTypes types() {
    return types;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  private void tell(String id, String reason, String remedy) {
    findings.add(Finding.warning(id, Place.draft(), reason).withRemedy(Remedy.of(remedy)));
  }

  void unsealed() {
    tell(
        "stored-seal-missing",
        "The file has no check sum, so nobody can tell whether it is still as it was written.",
        "Compare the measures with the garment, then store it again.");
  }

  void unread(Node whole) {
    List<String> places = new ArrayList<>();
    whole.collectUnread(places);
    for (String place : places) {
      tell(
          "stored-field-unknown",
          place + ": nobody here knows this field; it is lost when stored again.",
          "Keep the file as it is beside the new one.");
    }
  }

  void unknownFinish(String id, String words) {
    tell(
        "stored-finish-unknown",
        "The finish "
            + named(id, words)
            + " is not known here."
            + " Its lines are drawn as they were stored; strips and steps of it are missing.",
        KNOWING_TYPES);
  }

  void otherProfile(String id, String words) {
    tell(
        "stored-finish-changed",
        "The finish " + named(id, words) + " has other lines here than it was stored with.",
        "Compare the new paper with the old before cutting.");
  }

  void unknownAlteration(String id, String words) {
    tell(
        "stored-alteration-unknown",
        "The alteration "
            + named(id, words)
            + " is not known here."
            + " Its result is kept as it was stored.",
        KNOWING_TYPES);
  }

  void otherResult(String id, String words) {
    tell(
        "stored-alteration-changed",
        "The alteration "
            + named(id, words)
            + " gives another pattern here."
            + " Its result is kept as it was stored.",
        "Drop it and make it again to have the new one.");
  }

  private static String named(String id, String words) {
    return "\"" + id + "\" (" + words + ")";
  }
}
