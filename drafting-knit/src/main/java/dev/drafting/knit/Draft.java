package dev.drafting.knit;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.band.BodyPassage;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.FabricChange;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.OrderOfWork;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.SewingPlan;
import dev.drafting.knit.sewing.Step;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A pattern made up in given fabrics for a wearer: the one place that gives its strips, findings,
 * cut list, goods to buy and order of work. Every cloth of the pattern, usually "body" and "rib",
 * needs a fabric before it is asked for.
 *
 * <pre>{@code
 * List<Edge> edges = List.of(
 *     Edge.of("hem", Curve.line(new Point(0, 0), new Point(230, 0))).withFinish(TurnedHem.once(Length.mm(20))),
 *     Edge.of("side", Curve.line(new Point(230, 0), new Point(230, 400))).withFinish(SeamFinish.of(Length.mm(7))),
 *     Edge.of("top", Curve.line(new Point(230, 400), new Point(0, 400))).withFinish(FoldedBand.of(Length.mm(30), Length.mm(7))),
 *     Edge.onFold(Curve.line(new Point(0, 400), new Point(0, 0))));
 * Piece front = Piece.of("front", edges).withCutting(Cutting.onFold(1));
 * Piece back = Piece.of("back", edges).withCutting(Cutting.onFold(1));
 * Seam side = Seam.of("side", EdgeRef.parse("front side"), EdgeRef.parse("back side"));
 * Draft draft = Draft.of(Pattern.of("tube top", List.of(front, back), List.of(side)))
 *     .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.35)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80)).withStripRule("top", StripRule.ratio(0.85));
 * draft.strips().get(0).cutLength();  // => 802 mm
 * draft.findings();  // => [NOTE top: The band is 13.1 cm shorter than its edge, which is nearly straight: it draws the edge in. A cuff or a waist rib is meant to; a flat band is not.]
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Draft implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Brief brief;
  private final transient Derivation derived;

  private Draft(Plan given, Brief brief) {
    this.brief = brief;
    this.derived = new Derivation(given, brief);
  }

  /**
   * A draft of a pattern, without fabrics, for a wearer of whom nothing is known.
   *
   * @param pattern the pieces and the seams between them
   * @return the draft, named like its pattern
   * @throws DraftingException if the pattern cannot be sewn together
   */
  public static Draft of(Pattern pattern) {
    return of(Brief.of(pattern));
  }

  /**
   * A draft as it was given, such as one that was kept.
   *
   * @param brief everything that the draft was given
   * @return the draft
   * @throws DraftingException if the altered pattern cannot be drawn or sewn together
   */
  @Experimental
  public static Draft of(Brief brief) {
    return new Draft(Plan.of(brief.alterations().result()), brief);
  }

  /**
   * Everything that this draft was given, and nothing that follows from it.
   *
   * @return what {@link #of(Brief)} makes this draft from
   */
  @Experimental
  public Brief brief() {
    return brief;
  }

  /**
   * The same draft under another name.
   *
   * @param newName not blank
   * @return the draft
   * @throws DraftingException if the name is blank
   */
  public Draft withName(String newName) {
    return new Draft(derived.given(), brief.withName(newName));
  }

  /**
   * The same draft with a fabric for one of its cloths.
   *
   * @param cloth the part that the cloth plays in the pattern, such as "body" or "rib"
   * @param fabric what it is cut from
   * @return the draft
   */
  public Draft withFabric(String cloth, Fabric fabric) {
    return new Draft(derived.given(), brief.withFabric(cloth, fabric));
  }

  /**
   * The same draft for another wearer.
   *
   * @param newWearer who will wear it
   * @return the draft
   */
  public Draft withWearer(Wearer newWearer) {
    return new Draft(derived.given(), brief.withWearer(newWearer));
  }

  /**
   * The same draft of a garment whose fabric is known; its copy is then made to fit alike.
   *
   * @param copied the garment that fits
   * @return the draft
   */
  public Draft withOriginal(Original copied) {
    return new Draft(derived.given(), brief.withOriginal(copied));
  }

  /**
   * The same draft with a rule of the maker's for the strip of an opening.
   *
   * @param opening the opening's name; "armhole" means "armhole (left)" and "armhole (right)" both
   * @param rule how long its strip is made; recommended unless set
   * @return the draft
   * @throws DraftingException if there is no such opening, or no such place for the join on it
   */
  public Draft withStripRule(String opening, StripRule rule) {
    StripChoices.require(name(), derived.given().assembly().openings(), opening, rule);
    return new Draft(derived.given(), brief.withStripRule(opening, rule));
  }

  /**
   * The same draft with what a sewn strip has taught about its fabric.
   *
   * @param result what was seen; see there how far it moves the tension of the fabric
   * @return the draft, in which {@link #fabric} knows better
   */
  public Draft withSewnResult(SewnResult result) {
    return new Draft(derived.given(), brief.withSewnResult(result));
  }

  /**
   * The same draft without a result, every time that it was recorded.
   *
   * @param result what is to be forgotten
   * @return the draft
   */
  public Draft withoutSewnResult(SewnResult result) {
    return new Draft(derived.given(), brief.withoutSewnResult(result));
  }

  /**
   * What sewn strips have taught.
   *
   * @return an unmodifiable list in the order of recording
   */
  public List<SewnResult> sewnResults() {
    return brief.sewnResults();
  }

  /**
   * The same draft sewn as the maker chooses. The machines set the allowances of all its seams.
   *
   * @param newMaking machines, bands in the round or flat, tapes, and what calls for cautions
   * @return the draft
   * @throws DraftingException if an allowance or a tape is for a seam that is not there
   */
  public Draft withSewing(SewingChoices newMaking) {
    Draft draft = of(brief.sewnAs(newMaking));
    SewingPlan.requireSeams(draft.pattern(), newMaking.taped());
    return draft;
  }

  /**
   * How the maker sews.
   *
   * @return a four-thread overlocker and bands in the round, unless set
   */
  public SewingChoices sewingChoices() {
    return brief.sewing();
  }

  /**
   * The draft's name.
   *
   * @return that of the pattern unless set
   */
  public String name() {
    return brief.name();
  }

  /**
   * The same draft with one alteration more. Strips, paper and all else follow.
   *
   * @param alteration what the try-on showed
   * @param note why, in the maker's words; may be empty
   * @return the draft
   * @throws DraftingException if the pattern has no such place, or cannot be drawn or sewn so
   */
  public Draft withAlteration(Alteration alteration, String note) {
    return withAlterations(alterations().with(alteration, note));
  }

  /**
   * The same draft with other alterations: one undone, one dropped, or those of another garment
   * made on this pattern, {@code other.alterations().on(draft.alterations().base())}.
   *
   * @param record the pattern as it was first and what was altered
   * @return the draft
   * @throws DraftingException as {@link #withAlteration} does
   */
  public Draft withAlterations(AlterationRecord record) {
    return of(brief.withAlterations(record));
  }

  /**
   * The pattern as it was first, and what was altered since.
   *
   * @return the record
   */
  public AlterationRecord alterations() {
    return brief.alterations();
  }

  /**
   * The pattern as it was given.
   *
   * @return the pattern that the draft was made from
   */
  public Pattern pattern() {
    return derived.given().finished();
  }

  /**
   * The pattern to its finished outline in these fabrics: what is measured, assembled and finished.
   *
   * @return the pattern as it was given, changed where the original's fabric is another
   */
  public Pattern finished() {
    return derived.plan().finished();
  }

  /**
   * The garment that is copied.
   *
   * @return the garment that fits, or empty when its fabric is not known
   */
  public Optional<Original> original() {
    return brief.original();
  }

  /**
   * The change from the original's fabric to the body's.
   *
   * @return empty when one of the two is not known
   */
  public Optional<FabricChange> fabricChange() {
    return derived.fitting().change();
  }

  /**
   * What was done to the pattern for its fabrics, and for the wash, in figures.
   *
   * @return unmodifiable; empty when nothing was to be done
   */
  public List<String> adaptations() {
    return List.copyOf(derived.fitting().said());
  }

  /**
   * Who will wear it.
   *
   * @return the wearer
   */
  public Wearer wearer() {
    return brief.wearer();
  }

  /**
   * The fabrics that were given, by cloth.
   *
   * @return an unmodifiable map in the order of giving
   */
  public Map<String, Fabric> fabrics() {
    return brief.fabrics();
  }

  /**
   * The fabric for a cloth.
   *
   * @param cloth the part that the cloth plays in the pattern, such as "body" or "rib"
   * @return what it is cut from, with the tension that sewn results have taught
   * @throws DraftingException if no fabric was given for it
   */
  public Fabric fabric(String cloth) {
    return derived.fabric(cloth);
  }

  /**
   * The openings that are left when all seams are sewn.
   *
   * @return an unmodifiable list
   */
  public List<Opening> openings() {
    return derived.openings();
  }

  /**
   * The strips of all openings that get a band or binding.
   *
   * @return an unmodifiable list in the order of the openings
   * @throws DraftingException if a strip's cloth has no fabric
   */
  public List<Strip> strips() {
    return derived.strips();
  }

  /**
   * The openings against what they have to go over on this wearer: "neck" the head, sleeves the
   * hands, legs the feet, a waist the hips, and the hem of what has a neck the shoulders.
   *
   * @return unmodifiable, in the order of the openings; those whose girth is not known are left out
   * @throws DraftingException if a cloth of them has no fabric
   */
  public List<BodyPassage> passages() {
    return derived.passages();
  }

  /**
   * The opening named "neck" against the wearer's head.
   *
   * @return the check, or empty when there is no such opening or the girth is not known
   * @throws DraftingException if a cloth of it has no fabric
   */
  public Optional<BodyPassage> headOpening() {
    return passages().stream().filter(passage -> passage.part() == BodyPart.HEAD).findFirst();
  }

  /**
   * All that will go wrong, and what is to be known beforehand.
   *
   * @return an unmodifiable list, the gravest first, then by place
   * @throws DraftingException if a cloth has no fabric
   */
  public List<Finding> findings() {
    return derived.findings();
  }

  /**
   * The pieces with all the lines that are drawn on them.
   *
   * @return an unmodifiable list
   */
  public List<CutPiece> cutPieces() {
    return derived.plan().cutPlan().pieces();
  }

  /**
   * Everything that is cut.
   *
   * @return an unmodifiable list: the pieces, then the strips, then elastic and tapes
   * @throws DraftingException if a strip's cloth has no fabric
   */
  public List<CutItem> cutList() {
    return derived.plan().cutList(strips(), sewing().tapes());
  }

  /**
   * The measures of the garment lying flat: chest, lengths at the centres, seams, openings.
   *
   * @return an unmodifiable list
   */
  public List<Measure> measures() {
    return Measures.of(finished(), openings());
  }

  /**
   * A first estimate of what to buy; cloth with its shrinkage and 5 % more, in steps of 10 cm.
   *
   * @return an unmodifiable list: fabrics, elastic, tape, thread by colour, needles
   * @throws DraftingException if a cloth has no fabric
   */
  public List<Goods> goods() {
    return derived.goods();
  }

  /**
   * What is cut from one of the cloths, to be laid on it so that little is left over.
   *
   * @param cloth the part that the cloth plays in the pattern, such as "body"
   * @param goods the cloth as it is laid: how wide, folded how
   * @return the pieces and strips on the cloth
   * @throws DraftingException as {@link #strips} does
   */
  @Experimental
  public Lay lay(String cloth, Cloth goods) {
    return DraftLay.of(goods, cloth, derived.plan().cutPlan().clothPieces(), strips());
  }

  /**
   * What is cut from one of the cloths on its fabric's width, folded to the middle if the pieces on
   * the fold can lie beside each other, lengthwise if they are wider, else open.
   *
   * @param cloth the part that the cloth plays in the pattern
   * @return the pieces and strips on the cloth
   * @throws DraftingException as {@link #strips} does
   */
  @Experimental
  public Lay lay(String cloth) {
    return lay(cloth, DraftLay.cloth(fabric(cloth), cloth, derived.plan().cutPlan().clothPieces()));
  }

  /**
   * How every line is sewn on the machines at hand.
   *
   * @return the plan
   * @throws DraftingException if a cloth has no fabric
   */
  public SewingPlan sewing() {
    return derived.sewing();
  }

  /**
   * What to do, step by step.
   *
   * @return an unmodifiable list
   * @throws DraftingException if a cloth has no fabric
   */
  public List<Step> orderOfWork() {
    return OrderOfWork.of(sewing(), derived.usedFabrics(), sewingChoices().construction());
  }

  /**
   * The usual cautions.
   *
   * @return an unmodifiable list, with those for children when the wearer is a child
   */
  public List<Caution> cautions() {
    return derived.cautions();
  }

  /**
   * This draft beside another one.
   *
   * @param other the same garment in another fabric or size, or a changed pattern
   * @return lengths of both, and findings that only one of them has
   * @throws DraftingException if a cloth of either has no fabric
   */
  public Comparison compare(Draft other) {
    return Comparison.of(this, other);
  }

  private Object writeReplace() {
    return new KeptDraft(brief);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a draft is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Draft that && that.brief.equals(brief);
  }

  @Override
  public int hashCode() {
    return brief.hashCode();
  }

  @Override
  public String toString() {
    return DraftText.of(this);
  }
}
