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

  void unsealed() {
    findings.add(
        Finding.warning(
                "stored-seal-missing",
                Place.draft(),
                "The file has no check sum, so nobody can tell whether it is still as it was written.")
            .withRemedy(Remedy.of("Compare the measures with the garment, then store it again.")));
  }

  void unread(Node whole) {
    List<String> places = new ArrayList<>();
    whole.collectUnread(places);
    places.forEach(
        place ->
            findings.add(
                Finding.warning(
                        "stored-field-unknown",
                        Place.draft(),
                        place + ": nobody here knows this field; it is lost when stored again.")
                    .withRemedy(Remedy.of("Keep the file as it is beside the new one."))));
  }

  void unknownFinish(String id, String words) {
    findings.add(
        Finding.warning(
                "stored-finish-unknown",
                Place.draft(),
                "The finish \""
                    + id
                    + "\" ("
                    + words
                    + ") is not known here."
                    + " Its lines are drawn as they were stored; strips and steps of it are missing.")
            .withRemedy(Remedy.of("Read the file with types that know it.")));
  }

  void otherProfile(String id, String words) {
    findings.add(
        Finding.warning(
                "stored-finish-changed",
                Place.draft(),
                "The finish \""
                    + id
                    + "\" ("
                    + words
                    + ") has other lines here than it was stored with.")
            .withRemedy(Remedy.of("Compare the new paper with the old before cutting.")));
  }

  void unknownAlteration(String id, String words) {
    findings.add(
        Finding.warning(
                "stored-alteration-unknown",
                Place.draft(),
                "The alteration \""
                    + id
                    + "\" ("
                    + words
                    + ") is not known here."
                    + " Its result is kept as it was stored.")
            .withRemedy(Remedy.of("Read the file with types that know it.")));
  }

  void otherResult(String id, String words) {
    findings.add(
        Finding.warning(
                "stored-alteration-changed",
                Place.draft(),
                "The alteration \""
                    + id
                    + "\" ("
                    + words
                    + ") gives another pattern here."
                    + " Its result is kept as it was stored.")
            .withRemedy(Remedy.of("Drop it and make it again to have the new one.")));
  }
}
