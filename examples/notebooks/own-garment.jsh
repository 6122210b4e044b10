// From the tape to the paper in twelve lines: half a vest on the fold, traced at a few points, x and y in millimetres.
// Change a number and go on from there. The last line writes the sheets for an A4 printer into the folder target/own-vest.

TracedEdge hem = TracedEdge.of("hem", 0, 0, 240, 0);
TracedEdge side = TracedEdge.of("side", 240, 0, 240, 380);
TracedEdge armhole = TracedEdge.of("armhole", 240, 380, 220, 382, 196, 395, 176, 423, 168, 455, 165, 495, 167, 535, 172, 571, 180, 590);
TracedEdge shoulder = TracedEdge.of("shoulder", 180, 590, 105, 620);
TracedEdge neck = TracedEdge.of("neck", 105, 620, 98, 601, 89, 577, 76, 552, 58, 530, 32, 513, 0, 508);
Piece front = Truing.of(Tracing.of("front", Extent.HALF_ON_FOLD, List.of(hem, side, armhole, shoulder, neck))).result().piece();
Pattern sewn = Pattern.of("Own vest", List.of(front, Piece.of("back", front.edges())), List.of(Seam.of("shoulder", "front shoulder", "back shoulder"), Seam.of("side", "front side", "back side"))).withSeamAllowance(Length.mm(10));
Pattern vest = sewn.withFinish("front hem", TurnedHem.once(Length.cm(2))).withFinish("back hem", TurnedHem.once(Length.cm(2)));
Draft draft = Draft.of(vest).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.30));
table(draft.findings());
// => nothing found
show(draft);
Export.of(draft).pdf(Paper.A4).to(Path.of("target/own-vest"), Progress.none());

/exit
