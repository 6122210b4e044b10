// A first draft: a child's sleeveless top, traced half on the fold, with a rib band at the neck.
// Points are millimetres, x from the fold, y upwards. Change a number and see what follows from it.

Tracing traced = Tracing.of("front", Extent.HALF_ON_FOLD, List.of(
    TracedEdge.of("hem", List.of(new Point(0, 0), new Point(80, 1), new Point(170, 0))),
    TracedEdge.of("side", List.of(new Point(170, 0), new Point(160, 250))),
    TracedEdge.of("armhole", List.of(new Point(160, 250), new Point(133, 270), new Point(116, 305), new Point(110, 345), new Point(112, 380))),
    TracedEdge.of("shoulder", List.of(new Point(112, 380), new Point(70, 396))),
    TracedEdge.of("neck", List.of(new Point(70, 396), new Point(66, 366), new Point(52, 344), new Point(28, 332), new Point(0, 328)))));
TruedPiece trued = Truing.of(traced).withSmoothing(Length.mm(1)).withCurved("armhole").result();
System.out.println(trued.report());
// => front, the pencil wandered 1 mm, findings 0
// =>   hem: straight, 170 mm; 3 points, 0 refused, RMS 0.48 mm, largest 0.75 mm
// =>   side: straight, 250 mm; 2 points, 0 refused, RMS 0.01 mm, largest 0.01 mm
// =>   armhole: curved, 1 cubic, 148.9 mm; 5 points, 0 refused, RMS 0 mm, largest 0 mm
// =>   shoulder: straight, 45 mm; 2 points, 0 refused, RMS 0.01 mm, largest 0.01 mm
// =>   neck: curved, 1 cubic, 112.3 mm; 5 points, 0 refused, RMS 0.21 mm, largest 0.32 mm

Piece front = trued.piece();
System.out.println(front.edge("neck").curve().length().text(LengthUnit.CM));
// => 11.23 cm

// The back is the same here; shoulders and sides are sewn together.
Piece back = Piece.of("back", front.edges());
List<Seam> seams = List.of(
    Seam.of("shoulder", EdgeRef.parse("front shoulder"), EdgeRef.parse("back shoulder")),
    Seam.of("side", EdgeRef.parse("front side"), EdgeRef.parse("back side")));
FoldedBand band = FoldedBand.of(Length.mm(15), Length.mm(7));
Pattern top = Pattern.of("Top", List.of(front, back), seams).
    withFinish(EdgeRef.parse("front neck"), band).
    withFinish(EdgeRef.parse("back neck"), band);

Opening neck = Assembly.of(top).opening("neck");
System.out.println(neck.length().text(LengthUnit.CM));
// => 44.9 cm
System.out.println(neck.turning());
// => 276.63°

// How long is the strip of rib that lies flat there?
Fabric rib = Fabric.of("rib", Structure.RIB, 0.80).withRecovery(0.95);
Strip strip = Strip.of(neck, band, rib, StripRule.recommended());
System.out.println(strip.cutLength().text(LengthUnit.CM));
// => 48.51 cm
System.out.println(strip.window());
// => 44.6 to 48.4 cm
System.out.println(strip.outcome());
// => LIES_FLAT

Strip tight = Strip.of(neck, band, rib, StripRule.shorterBy(Length.cm(9)));
System.out.println(tight.outcome());
// => PUCKERS
System.out.println(tight.findings());
// => [WARNING neck: The band is 15 mm too short for its edge: the neck edge will pucker.]

// And does the neck go over a head of 52 cm?
Fabric jersey = Fabric.of("jersey", Structure.JERSEY, 0.30);
BodyPassage head = BodyPassage.of(strip, jersey, BodyPart.HEAD, Length.cm(52));
System.out.println(head);
// => neck stretches to 64.5 cm, head needs 53 cm: goes over the head

/exit
