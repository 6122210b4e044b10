// The same garment in another fabric: how far the cloth gives decides how wide it must be, and whether the head passes.

Garment vest = GarmentFolder.read(Path.of("examples/programs/garments/vest"));
Draft jersey = vest.make("A cotton jersey");
Draft interlock = vest.make("B interlock");
Draft pique = vest.make("C pique");

for (Draft draft : List.of(jersey, interlock, pique)) {
  System.out.println(draft.name() + ": " + Wording.percent(draft.fabric("body").stretchAcross()));
}
// => Boathouse vest, A cotton jersey: 30 %
// => Boathouse vest, B interlock: 59.7 %
// => Boathouse vest, C pique: 15 %
System.out.println(FabricComparison.of(jersey.fabric("body"), interlock.fabric("body")));
// => adapt: gives 59.7 % across instead of 30 %; gives 40 % along instead of 15 %; weighs 220 instead of 170 g/m2 and hangs differently
System.out.println(FabricComparison.of(jersey.fabric("body"), pique.fabric("body")));
// => adapt: gives 15 % across instead of 30 %

// What changes from one to the other, and what does not:
System.out.println(jersey.compare(interlock));
// => 11 of 19 lengths differ: chest, all round: 93 cm here, 88.5 cm there (-45 mm); chest, lying flat: 46.5 cm here, 44.2 cm there (-22.5 mm); hem, finished edge: 89.8 cm here, 85.3 cm there (-44.6 mm); armhole (right), finished edge: 51.5 cm here, 50.7 cm there (-8.1 mm); armhole (left), finished edge: 51.5 cm here, 50.7 cm there (-8.1 mm); armhole (right) binding, loop: 52.2 cm here, 51.4 cm there (-8 mm); ...

// The pique does not go over the head, and says so:
System.out.println(pique.headOpening().get());
// => neck stretches to 52.7 cm, head needs 59 cm: does not go over the head

// A fabric measured on the gauge: pulled between two fingers along a ruler, then let go.
Fabric own = Fabric.of("own jersey", Structure.JERSEY, GaugeReading.of(Length.cm(10), Length.cm(13.5), Length.cm(10.1)));
System.out.println(own);
// => own jersey: single jersey, stretch 35 % (stretchy), recovery 97.1 %

/exit
