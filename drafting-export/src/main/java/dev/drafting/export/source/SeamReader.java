package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.knit.sewing.Machines;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads which edges are sewn together, with which allowance. */
final class SeamReader {
  private static final int MOST_SEAMS = 200;
  private static final int MOST_EDGES = 20;
  private static final Length MOST_ALLOWANCE = Length.mm(50);
  private static final Length MOST_EASE = Length.mm(500);
  private static final Map<String, Boolean> MEETINGS = choice("start to start", "end to start");
  private static final Map<String, Boolean> KINDS = choice("seam", "lap");

  private final EdgeNames edges;
  private final Optional<Machines> machines;
  private final Unique<Seam> seams = new Unique<>("seam");
  private final Map<EdgeRef, Finish> finishes = new LinkedHashMap<>();

  private SeamReader(EdgeNames edges, Optional<Machines> machines) {
    this.edges = edges;
    this.machines = machines;
  }

  private static Map<String, Boolean> choice(String no, String yes) {
    Map<String, Boolean> choice = new LinkedHashMap<>();
    choice.put(no, false);
    choice.put(yes, true);
    return choice;
  }

  /** Where machines are given, their allowance holds for a seam that has none of its own. */
  static SeamReader read(Entry list, EdgeNames edges, Optional<Machines> machines) {
    SeamReader reader = new SeamReader(edges, machines);
    list.list(0, MOST_SEAMS).forEach(reader::add);
    return reader;
  }

  /** The seams in the order of the file. */
  List<Seam> seams() {
    return List.copyOf(seams.all().values());
  }

  /** The allowance of every edge that is in a seam. */
  Map<EdgeRef, Finish> finishes() {
    return finishes;
  }

  private void add(Entry entry) {
    Fields fields = entry.fields("name", "join", "allowance", "ease", "drawnIn", "meet", "kind");
    String name = fields.get("name").name();
    List<Entry> sides = fields.get("join").list(1, 2);
    SeamFinish finish = SeamFinish.of(allowance(fields, name));
    if (fields.or("kind", false, e -> e.choice("kind of seam", KINDS))) {
      addLap(entry, fields, name, finish);
      return;
    }
    List<EdgeRef> first = side(sides.get(0), finish);
    List<EdgeRef> second = sides.size() == 2 ? side(sides.get(1), finish) : List.of();
    if (second.isEmpty() && first.size() > 1) {
      throw sides
          .get(0)
          .fault("a seam of one side joins one edge to its own mirror image")
          .accepted("one edge, or two sides");
    }
    Length ease = fields.or("ease", Length.ZERO, e -> e.length(MOST_EASE.negated(), MOST_EASE));
    Fullness fullness =
        fields.or("drawnIn", Fullness.eased(), e -> e.placed(() -> Fullness.parse(e.text(20))));
    boolean turned = turned(fields);
    seams.put(entry, name, entry.placed(() -> seam(name, first, second, ease, fullness, turned)));
  }

  /** The edge on top is sewn in a seam of its own, so that its allowance comes from there. */
  private void addLap(Entry entry, Fields fields, String name, SeamFinish finish) {
    List<Entry> sides = fields.get("join").list(2, 2);
    EdgeRef over = edges.find(sides.get(0));
    EdgeRef under = sewn(sides.get(1), finish);
    boolean turned = turned(fields);
    seams.put(
        entry,
        name,
        entry.placed(
            () -> {
              Seam lap = Seam.lapped(name, over.toString(), under.toString());
              return turned ? lap.endToStart() : lap;
            }));
  }

  private static boolean turned(Fields fields) {
    return fields.or("meet", false, e -> e.choice("way to meet", MEETINGS));
  }

  private Length allowance(Fields fields, String name) {
    Optional<Entry> own = fields.find("allowance");
    return machines.isPresent() && own.isEmpty()
        ? machines.get().allowance(name)
        : fields.get("allowance").length(Length.ZERO, MOST_ALLOWANCE);
  }

  private static Seam seam(
      String name,
      List<EdgeRef> first,
      List<EdgeRef> second,
      Length ease,
      Fullness fullness,
      boolean turned) {
    Seam plain =
        second.isEmpty() ? Seam.mirrored(name, first.get(0)) : Seam.of(name, first, second);
    Seam eased = ease.isZero() ? plain : plain.withEase(ease).drawnIn(fullness);
    return turned ? eased.endToStart() : eased;
  }

  /** One edge, or a list of edges that follow each other. */
  private List<EdgeRef> side(Entry side, SeamFinish finish) {
    List<Entry> names = side.isList() ? side.list(1, MOST_EDGES) : List.of(side);
    return names.stream().map(name -> sewn(name, finish)).toList();
  }

  private EdgeRef sewn(Entry name, SeamFinish finish) {
    EdgeRef edge = edges.find(name);
    if (finishes.putIfAbsent(edge, finish) != null) {
      throw name.fault("the edge is in two seams").accepted("one seam for each edge");
    }
    return edge;
  }
}
