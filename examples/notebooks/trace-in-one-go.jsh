// Traced past the corners in one go, twice, and photographed askew: what comes out is the same piece.

// Half a vest on the fold, a point every few centimetres, x and y in millimetres, in one stroke.
Polyline round = Polyline.of(0, 0, 40, 0, 80, 0, 120, 0, 160, 0, 200, 0, 240, 0, 240, 60, 240, 120, 240, 180, 240, 240, 240, 310, 240, 380, 220, 382, 196, 395, 176, 423, 168, 455, 165, 495, 167, 535, 172, 571, 180, 590, 155, 600, 130, 610, 105, 620, 98, 601, 89, 577, 76, 552, 58, 530, 32, 513, 0, 508);
UnnamedTracing traced = UnnamedTracing.of("front", Extent.HALF_ON_FOLD, round);
traced.stretches().forEach(System.out::println);
// => 1: (0, 0) to (240, 0), 240 mm apart
// => 2: (240, 0) to (240, 380), 380 mm apart
// => 3: (240, 380) to (180, 590), 218.4 mm apart
// => 4: (180, 590) to (105, 620), 80.8 mm apart
// => 5: (105, 620) to (0, 508), 153.5 mm apart

// Name what lies between the corners, and true it:
Tracing first = traced.named("hem", "side", "armhole", "shoulder", "neck");
TruedPiece trued = Truing.of(first).result();
System.out.println(trued.piece());
// => front: hem 240 mm, side 380 mm, armhole 252.9 mm, shoulder 80.8 mm, neck 166.4 mm, fold 507.8 mm; cut 1 on the fold
show(TracingDrawing.of("Vest", List.of(first), List.of(trued)));

// A second tracing of the same garment lies a little lower on the table. Laid on each other, both say what they agree on:
RepeatedTracing twice = RepeatedTracing.of(first, first.map(Transform.translation(new Vector(0, -4))));
System.out.println(twice);
// => front, traced 2 times, off their mean 0 mm, 0 mm

// A sheet of A4 paper beside the garment tells the scale of a photograph, and what is askew. Its corners as seen, in pixels:
DrawnRectangle sheet = DrawnRectangle.of(Length.mm(210), Length.mm(297), new Point(212, 190), new Point(630, 214), new Point(604, 788), new Point(232, 770));
System.out.println(sheet);
// => 210 mm x 297 mm, 0.523 mm to the unit, out of square by 5.3°
System.out.println(sheet.corrected(new Point(421, 480)));
// => (105.440393485, 134.435412961)

// What was traced at the old cut edge lies outside the finished edge, here by 10 mm at the side:
System.out.println(Truing.of(first).withTracedOutside("side", Length.mm(10)).result().piece().edge("hem").length().text(LengthUnit.MM));
// => 230 mm

/exit
