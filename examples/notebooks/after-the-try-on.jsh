// After the try-on: what was snipped and pinned on the first copy goes back into the pattern.
// Change a number, run it again, and look at what follows. The picture of before and after opens in a window of its own.

Draft first = GarmentFolder.read(Path.of("examples/programs/garments/vest")).makes().values().iterator().next();

// The neck was tight under the chin: 8 mm were cut off the raw edge at the centre, nothing any more 6 cm from the shoulder.
Alteration snip = Alteration.snip("front neck", Length.mm(8), EdgePlace.at("fold"), EdgePlace.from("shoulder", Length.cm(6)));
snip.changes(first.pattern()).get(0);
// => front / neck: 134 mm, then 138.8 mm; moves by up to 8 mm

Draft second = first.withAlteration(snip, "tight under the chin").withAlteration(Alteration.widenStrap("shoulder", Length.mm(-5)), "rubs at the arm");
first.compare(second).differences().size();
// => 11

// The straps were right after all: the second alteration is dropped and leaves no trace.
Draft third = second.withAlterations(second.alterations().undone());
third.equals(first.withAlteration(snip, "tight under the chin"));
// => true

// From measures: what the sewn vest measures and what it should. The proposals can be made one by one.
WantedMeasure.proposals(third.pattern(), List.of(WantedMeasure.girth("side", Length.cm(93), Length.cm(91)), WantedMeasure.neckDepth("front neck", Length.mm(108), Length.mm(112))));
// => [take in 5 mm at the side seam, lower front / neck by 4 mm]

show(ChangeDrawing.of(second.alterations()));

/exit
