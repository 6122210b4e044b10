// Shirts for a crew: three sizes of the built-in T-shirt, all of them laid on one cloth.

GarmentTemplate tee = Templates.installed().get("t-shirt");

// The dimensions of one size, and what is added from each to the next. The numbers are yours; these are invented.
SizeRun run = SizeRun.of("S", Dimensions.of().with("chest", Length.cm(96)).with("length", Length.cm(66)));
SizeRun sizes = run.then("M", Map.of("chest", Length.cm(6), "length", Length.cm(2))).then("L", Map.of("chest", Length.cm(6), "length", Length.cm(2)));
Map<String, Pattern> patterns = sizes.patterns(tee);
for (String size : patterns.keySet()) { System.out.println(size + ": side " + patterns.get(size).piece("front").edge("side").length().text(LengthUnit.CM)); }
// => S: side 43 cm
// => M: side 45 cm
// => L: side 47 cm

// All sizes in each other, for one sheet of paper:
show(NestedDrawing.of("T-shirt", patterns));

// One shirt of each on one cloth: jersey, washed, 150 cm wide, both selvages folded to the middle.
Lay lay = Lay.on(Cloth.of(Length.cm(150)).foldedToTheMiddle());
for (Pattern pattern : patterns.values()) { lay = lay.with(CutPlan.of(pattern).pieces()); }
LayPlan together = lay.plan(1, 30);
System.out.println(together.fits() + ", " + together.pieces().size() + " pieces");
// => true, 9 pieces
System.out.println(together.toBuy(0.05, 0.03).text(LengthUnit.CM) + " to buy: 5 % shrinkage, 3 % for the ends");
// => 280 cm to buy: 5 % shrinkage, 3 % for the ends

// The pieces may lie a little off their grain where no stripe shows it:
System.out.println(lay.withGrainWithin(Angle.degrees(2)).plan(1, 30).length().compareTo(Length.cm(300)) < 0);
// => true

// Where everything lies, from the cut end and from the fold, to be laid with a tape:
System.out.println(together.pieces().get(0));
// => front: 116.96 cm from the cut end, on the fold, 68.46 cm long, 25.22 cm wide

// What is left in one piece, for pockets and trial seams:
System.out.println(together.remnants(Length.cm(12)).size() > 0);
// => true
show(LayDrawing.of("T-shirts", together));

/exit
