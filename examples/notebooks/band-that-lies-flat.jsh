// A band that lies flat: which loops of rib lie flat on a neck, and why a ratio alone does not know.
// The vest of the demo garment, as it was traced; its neck and armholes in rib.

Garment vest = GarmentFolder.read(Path.of("examples/programs/garments/vest"));
Draft draft = vest.make("A cotton jersey");
Opening neck = Assembly.of(draft.pattern()).opening("neck");
System.out.println(neck.length().text(LengthUnit.CM));
// => 45.71 cm

// A folded band is sewn on a line of its own, inside the finished edge, and the edge turns: so the band's own edge is
// shorter than the line that it is sewn to. Between these two lengths it lies flat.
Strip ofNeck(Draft draft) {
  return draft.strips().stream().filter(strip -> strip.name().startsWith("neck")).findFirst().orElseThrow();
}
Strip strip = ofNeck(draft);
System.out.println(strip.window());
// => 45.4 to 48.7 cm

// The strip of the demo garment, with what is sewn in at its two ends:
System.out.println(strip.cutLength().text(LengthUnit.CM) + ", " + strip.outcome());
// => 48.48 cm, LIES_FLAT

// The rule of thumb, 85 % of the edge, and a maker's own 5 cm:
for (StripRule rule : List.of(StripRule.ratio(0.85), StripRule.shorterBy(Length.cm(5)), StripRule.recommended())) {
  Strip tried = ofNeck(draft.withStripRule("neck", rule));
  System.out.println(rule + ": " + tried.cutLength().text(LengthUnit.CM) + ", " + tried.outcome());
}
// => 85 % of its edge, 10 mm at each end for the join: 46.09 cm, PUCKERS
// => 50 mm shorter than its edge, 10 mm at each end for the join: 48.87 cm, LIES_FLAT
// => as recommended, 10 mm at each end for the join: 49.08 cm, LIES_FLAT

// What is said beforehand:
table(ofNeck(draft.withStripRule("neck", StripRule.ratio(0.85))).findings());
// => WARNING  neck                 The band is 13 mm too short for its edge: the neck edge will pucker.
// =>                               - Cut it 47.4 to 50.7 cm long: at least 13 mm longer.
// =>                               - Or leave the seam where it is and let the band show 16 mm instead of 13 mm.
// => 1 found

/exit
