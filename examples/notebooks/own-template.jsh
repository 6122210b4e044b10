// A garment of your own as a template: a wrist warmer, tried out before anybody sews it.

class WristWarmer implements GarmentTemplate {
  public String id() { return "wrist-warmer"; }
  public String about() { return "a tube from the hand up the forearm, with one seam"; }
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth("hand", "round the knuckles, as the finished edge", Length.cm(12), Length.cm(18), Length.cm(28)),
        Dimension.girth("forearm", "round the forearm where it ends", Length.cm(14), Length.cm(22), Length.cm(36)),
        Dimension.length("height", "from edge to edge", Length.cm(8), Length.cm(20), Length.cm(40)));
  }
  public Pattern draw(Dimensions given) {
    double hand = given.length("hand").toMm() / 2, arm = given.length("forearm").toMm() / 2, height = given.length("height").toMm();
    Point a = new Point(0, 0), b = new Point(arm, 0), c = new Point(hand, height), d = new Point(0, height);
    Piece tube = Piece.of("tube", List.of(
        Edge.of("arm edge", Curve.line(a, b)), Edge.of("seam", Curve.line(b, c)),
        Edge.of("hand edge", Curve.line(c, d)), Edge.onFold(Curve.line(d, a)))).withCutting(Cutting.onFold(2));
    return Pattern.of("Wrist warmer", List.of(tube), List.of(Seam.mirrored("seam", EdgeRef.parse("tube seam"))))
        .withSeamAllowance(Length.mm(7))
        .withFinish("tube arm edge", TurnedHem.once(Length.mm(15)))
        .withFinish("tube hand edge", TurnedHem.once(Length.mm(15)));
  }
}

WristWarmer warmer = new WristWarmer();

// The contract draws it at fifty places all over its bounds. A slanting seam makes a point in both hems, and it says so:
TemplateContract.check(warmer, 1, 50).stream().limit(1).forEach(System.out::println);
// => WARNING arm edge: at the seam seam the edge makes a point: the corners (tube 84°, tube 84°) add up to 167° instead of 180° (forearm 18.51 cm, hand 13.7 cm, height 21.39 cm)

// As wide at the hand as at the arm there is none:
System.out.println(warmer.pattern(Dimensions.of().with("hand", Length.cm(20)).with("forearm", Length.cm(20))).piece("tube"));
// => tube: arm edge 100 mm, seam 200 mm, hand edge 100 mm, fold 200 mm; cut 2 on the fold

// Out of bounds is refused by name:
try { warmer.pattern(Dimensions.of().with("hand", Length.cm(60))); } catch (DraftingException e) { System.out.println(e.getMessage()); }
// => wrist-warmer: hand: the dimension is out of bounds. Found: 60 cm. Accepted: 12 cm to 28 cm.

// Everything that a built-in garment does works with it: a draft, its order of work, what to buy.
Fabric fleece = Fabric.of("thin fleece", Structure.OTHER, 0.35);
Draft draft = Draft.of(warmer.pattern(Dimensions.of())).withFabric("body", fleece);
System.out.println(draft.measures().get(0));
// => tube, length at the centre: 20 cm
System.out.println(draft.lay("body", Cloth.of(Length.cm(140))).plan(1, 20).length().text(LengthUnit.CM));
// => 23.04 cm

/exit
