package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Junction;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.band.BandFinish;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The seams and finishes of a garment in the order in which they can be sewn. What must come first
 * follows from where seams end and cross; what had better come first is left out where it would
 * contradict that.
 */
final class Making {
  private static final String TRY_ON = "try on";
  private static final int PATCH = 0;
  private static final int CLOSES_HEAD = 1;
  private static final int FITTING = 2;
  private static final int HEAD_FINISH = 3;
  private static final int CHAIN = 4;
  private static final int SEAM = 5;
  private static final int BAND = 6;
  private static final int HEM = 7;
  private static final int FASTENERS = 8;

  private final Assembly sewn;
  private final String headOpening;
  private final Construction construction;
  private final WorkGraph graph = new WorkGraph();
  private final Map<String, Patch> patches = new LinkedHashMap<>();
  private final Map<String, Placket> plackets = new LinkedHashMap<>();
  private final Map<String, Placket> fasteners = new LinkedHashMap<>();
  private final Map<String, SeamTask> seams = new LinkedHashMap<>();
  private final Map<String, FinishTask> finishes = new LinkedHashMap<>();

  Making(Assembly sewn, String headOpening, Construction construction) {
    this.sewn = sewn;
    this.headOpening = headOpening;
    this.construction = construction;
    addPatches();
    addPlackets();
    addSeams();
    addFinishes();
    graph.add(TRY_ON, FITTING);
    crossings();
    closings();
    fitting();
    hemsLast();
    fastenersLast();
  }

  /** The seam that is still open when an opening is finished flat, by the opening's name. */
  Map<String, String> openSeams() {
    Map<String, String> open = new LinkedHashMap<>();
    finishes.values().stream()
        .filter(FinishTask::isFlat)
        .forEach(task -> task.openings().forEach(o -> open.put(o.name(), task.openSeam())));
    return open;
  }

  /** Stitched on while the pieces beneath lie flat. */
  private void addPatches() {
    for (Patch patch : sewn.pattern().patches()) {
      String id = "patch " + patch.piece();
      patches.put(id, patch);
      graph.add(id, PATCH);
    }
  }

  /** Sewn while the piece lies flat, before anything is sewn round its mouth. */
  private void addPlackets() {
    for (Placket placket : sewn.pattern().plackets()) {
      String id = "placket " + placket.edge();
      plackets.put(id, placket);
      graph.add(id, PATCH);
      if (placket.fasteners() > 0) {
        String closing = "fasteners " + placket.edge();
        fasteners.put(closing, placket);
        graph.add(closing, FASTENERS);
      }
    }
  }

  /**
   * Centre seams that meet in the middle of the garment are sewn in one pass, as a crotch is,
   * unless a seam of several edges goes between them.
   */
  private void addSeams() {
    for (Seam seam : sewn.pattern().seams()) {
      SeamTask joined =
          seams.values().stream().filter(task -> inOnePass(task, seam)).findFirst().orElse(null);
      if (joined == null) {
        SeamTask task = SeamTask.of(seam);
        seams.put(task.id(), task);
      } else {
        seams.put(joined.id(), joined.with(seam));
      }
    }
    for (SeamTask task : List.copyOf(seams.values())) {
      if (construction == Construction.FLAT && closesHeadLast(task)) {
        seams.remove(task.id());
        task.bySide().forEach(side -> seams.put(side.id(), side));
      }
    }
    seams.values().forEach(task -> graph.add(task.id(), rank(task)));
  }

  private boolean inOnePass(SeamTask task, Seam seam) {
    return seam.isMirrored()
        && task.isCentre()
        && sewn.junctions().stream()
            .filter(junction -> junction.openEdges().isEmpty() && !endsChain(junction))
            .map(Junction::ending)
            .anyMatch(
                ending ->
                    ending.contains(seam.name())
                        && task.names().stream().anyMatch(ending::contains));
  }

  private boolean endsChain(Junction junction) {
    return sewn.pattern().seams().stream()
        .filter(seam -> junction.ending().contains(seam.name()))
        .anyMatch(seam -> SeamTask.of(seam).isChain());
  }

  private int rank(SeamTask task) {
    if (headOpening().stream().anyMatch(head -> meets(head, task))) {
      return CLOSES_HEAD;
    }
    return task.isChain() ? CHAIN : SEAM;
  }

  private List<Opening> headOpening() {
    return sewn.openings().stream().filter(opening -> opening.name().equals(headOpening)).toList();
  }

  /** Of the seams that close a banded opening for the head, the last one waits for the band. */
  private boolean closesHeadLast(SeamTask task) {
    List<Opening> banded =
        headOpening().stream().filter(opening -> opening.finish() instanceof BandFinish).toList();
    if (banded.isEmpty() || task.isCentre() || task.isLapped()) {
      return false;
    }
    List<SeamTask> closing =
        seams.values().stream().filter(other -> meets(banded.get(0), other)).toList();
    return closing.get(closing.size() - 1).equals(task);
  }

  private boolean meets(Opening opening, SeamTask task) {
    Set<EdgeRef> edges =
        opening.parts().stream().map(OpeningPart::edge).collect(Collectors.toSet());
    return sewn.junctions().stream()
        .filter(junction -> junction.openEdges().stream().anyMatch(edges::contains))
        .anyMatch(junction -> task.names().stream().anyMatch(junction.ending()::contains));
  }

  /** One task for openings that are named alike, such as the two armholes. */
  private void addFinishes() {
    Map<String, List<Opening>> alike = new LinkedHashMap<>();
    for (Opening opening : sewn.openings()) {
      if (!(opening.finish() instanceof RawEdge)) {
        alike.computeIfAbsent(Machines.bare(opening.name()), n -> new ArrayList<>()).add(opening);
      }
    }
    alike.forEach(
        (name, openings) -> {
          FinishTask task = FinishTask.of(name, openings);
          finishes.put(task.id(), task);
          graph.add(task.id(), rank(task));
        });
  }

  private int rank(FinishTask task) {
    if (task.openings().stream().anyMatch(headOpening()::contains)) {
      return HEAD_FINISH;
    }
    return task.isBand() ? BAND : HEM;
  }

  /** A seam that crosses the end of another one comes after it; so does one in the centre. */
  private void crossings() {
    for (Junction junction : sewn.junctions()) {
      for (SeamTask ending : tasks(junction.ending())) {
        tasks(junction.crossing()).forEach(crossing -> graph.need(crossing.id(), ending.id()));
      }
    }
    for (Junction junction : sewn.junctions()) {
      if (junction.openEdges().isEmpty()) {
        List<SeamTask> meeting = tasks(junction.ending());
        for (SeamTask first : meeting) {
          for (SeamTask then : meeting) {
            if (first.comesBefore(then)) {
              graph.need(then.id(), first.id());
            }
          }
        }
      }
    }
  }

  private List<SeamTask> tasks(Collection<String> seamNames) {
    return seams.values().stream()
        .filter(task -> task.names().stream().anyMatch(seamNames::contains))
        .toList();
  }

  /**
   * An opening is finished when its seams are sewn; flat, when all but the last are; before its
   * edges are lapped.
   */
  private void closings() {
    for (FinishTask finish : List.copyOf(finishes.values())) {
      List<SeamTask> closing = closing(finish);
      SeamTask last = openSeam(finish, closing);
      for (SeamTask seam : closing) {
        if (seam.isLapped()) {
          graph.need(seam.id(), finish.id());
          finishes.put(finish.id(), finish.beforeLap());
        } else if (seam.equals(last) && graph.canNeed(seam.id(), finish.id())) {
          graph.need(seam.id(), finish.id());
          finishes.put(finish.id(), finish.before(seam));
        } else {
          graph.need(finish.id(), seam.id());
        }
      }
    }
  }

  private List<SeamTask> closing(FinishTask finish) {
    return seams.values().stream()
        .filter(seam -> finish.openings().stream().anyMatch(opening -> meets(opening, seam)))
        .sorted(Comparator.comparingInt(this::rank))
        .toList();
  }

  /**
   * The one place where an opening that is finished flat is still open; null if it is finished in
   * the round, as it must be where its last seam meets it twice.
   */
  private @Nullable SeamTask openSeam(FinishTask finish, List<SeamTask> closing) {
    if (construction != Construction.FLAT || closing.isEmpty()) {
      return null;
    }
    boolean flatHem = !finish.isBand() && closing.size() > 1;
    SeamTask last = closing.get(closing.size() - 1);
    boolean onBothSides = finish.isAllRound() && !last.isOneSide() && !last.isCentre();
    boolean several = last.seams().size() > 1;
    return flatHem || onBothSides || several ? null : last;
  }

  /** Tried on when what closes the neck is sewn and the rest is basted, before any finish. */
  private void fitting() {
    List<String> closing =
        seams.values().stream()
            .filter(task -> rank(task) == CLOSES_HEAD)
            .map(SeamTask::id)
            .toList();
    Collection<String> before = closing.isEmpty() ? seams.keySet() : closing;
    finishes.keySet().forEach(finish -> graph.need(finish, TRY_ON));
    before.forEach(seam -> graph.need(TRY_ON, seam));
  }

  private void hemsLast() {
    for (FinishTask hem : finishes.values()) {
      if (!hem.isBand() && rank(hem) == HEM && !hem.isFlat()) {
        finishes.values().stream()
            .filter(FinishTask::isBand)
            .forEach(band -> graph.need(hem.id(), band.id()));
        seams.keySet().forEach(seam -> graph.need(hem.id(), seam));
      }
    }
  }

  private void fastenersLast() {
    for (String closing : fasteners.keySet()) {
      seams.keySet().forEach(seam -> graph.need(closing, seam));
      finishes.keySet().forEach(finish -> graph.need(closing, finish));
    }
  }

  /** The steps in words, with the stitches of a plan. */
  List<Step> steps(SewingPlan plan) {
    List<Step> steps = new ArrayList<>();
    Set<String> done = new LinkedHashSet<>();
    for (String id : graph.inOrder()) {
      SeamTask seam = seams.get(id);
      FinishTask finish = finishes.get(id);
      if (patches.containsKey(id)) {
        steps.add(PatchSteps.stitchOn(patches.get(id), plan));
      } else if (plackets.containsKey(id)) {
        steps.add(PlacketSteps.sew(plackets.get(id), plan));
      } else if (fasteners.containsKey(id)) {
        steps.add(PlacketSteps.close(fasteners.get(id)));
      } else if (seam != null) {
        steps.add(SeamSteps.sew(seam, plan));
      } else if (finish != null) {
        steps.add(FinishSteps.of(finish, plan));
      } else {
        steps.add(
            SeamSteps.tryOn(
                seams.values().stream().filter(task -> !done.contains(task.id())).toList(),
                List.copyOf(seams.values())));
      }
      done.add(id);
    }
    return steps;
  }
}
