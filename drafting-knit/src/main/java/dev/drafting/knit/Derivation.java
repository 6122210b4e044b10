package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.knit.band.BodyPassage;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.Cautions;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.sewing.SewingPlan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What follows from a plan and a brief, computed when it is first asked for and left behind when a
 * draft is stored.
 */
final class Derivation {
  private final Plan given; // before any fabric
  private final Brief brief;
  private volatile @Nullable Plan plan;
  private volatile @Nullable List<Strip> strips;
  private volatile @Nullable SewingPlan sewing;
  private volatile @Nullable List<Finding> findings;

  Derivation(Plan given, Brief brief) {
    this.given = given;
    this.brief = brief;
  }

  Plan given() {
    return given;
  }

  Plan plan() {
    Plan known = plan;
    if (known == null) {
      known = given.in(fitting());
      plan = known;
    }
    return known;
  }

  FabricFitting fitting() {
    return new FabricFitting(
        given.finished(), brief.fabrics(), brief.wearer(), brief.original().orElse(null));
  }

  Fabric fabric(String cloth) {
    Fabric fabric = brief.fabrics().get(cloth);
    if (fabric == null) {
      throw Cloths.missing(cloth, brief.fabrics(), Cloths.names(given.finished(), openings()))
          .at(brief.name());
    }
    return brief.strips().taught(fabric);
  }

  List<Fabric> usedFabrics() {
    return Cloths.names(given.finished(), openings()).stream()
        .map(this::fabric)
        .distinct()
        .toList();
  }

  List<Opening> openings() {
    return plan().assembly().openings();
  }

  List<Strip> strips() {
    List<Strip> known = strips;
    if (known == null) {
      known = brief.strips().strips(plan(), brief.sewing().construction(), this::fabric);
      strips = known;
    }
    return known;
  }

  List<BodyPassage> passages() {
    return PassageCheck.of(
        plan().finished(), openings(), strips(), brief.wearer(), sewing(), this::fabric);
  }

  SewingPlan sewing() {
    SewingPlan known = sewing;
    if (known == null) {
      known =
          SewingPlan.of(
              plan().assembly(),
              strips(),
              this::fabric,
              brief.sewing().machines(),
              PassageCheck.NECK,
              brief.sewing().taped());
      sewing = known;
    }
    return known;
  }

  List<Finding> findings() {
    List<Finding> known = findings;
    if (known == null) {
      List<Finding> all = new ArrayList<>(plan().assembly().findings());
      all.addAll(plan().cutPlan().findings());
      fitting().change().ifPresent(change -> all.addAll(change.findings()));
      all.addAll(
          Findings.of(plan().finished(), openings(), usedFabrics(), brief.wearer(), this::fabric));
      strips().forEach(strip -> all.addAll(strip.findings()));
      all.addAll(PassageCheck.findings(passages(), brief.wearer()));
      all.addAll(sewing().findings());
      all.addAll(Cautions.findings(brief.wearer().age(), brief.wearer().height(), details()));
      known = Findings.inOrder(all);
      findings = known;
    }
    return known;
  }

  List<Goods> goods() {
    return GoodsEstimate.of(plan(), sewing(), strips(), this::fabric);
  }

  List<Caution> cautions() {
    return Cautions.of(brief.wearer().age(), brief.wearer().height(), details());
  }

  /** What the maker said the garment has, and what its finishes need. */
  private Set<Detail> details() {
    Set<Detail> details = new LinkedHashSet<>(brief.sewing().details());
    details.addAll(Elastics.details(openings()));
    details.addAll(Plackets.details(plan().finished()));
    return details;
  }
}
