package dev.drafting.architecture;

import dev.drafting.core.alter.WantedMeasure;
import dev.drafting.core.assembly.PatternTruing;
import dev.drafting.core.cut.ChalkTable;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.grade.GradeRule;
import dev.drafting.core.grade.Grading;
import dev.drafting.core.lay.StripLay;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.SizeRun;
import dev.drafting.core.template.Templates;
import dev.drafting.core.trace.DrawnRectangle;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.RepeatedTracing;
import dev.drafting.core.trace.TapedHalf;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.Truing;
import dev.drafting.core.trace.UnnamedTracing;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.store.sample.RandomDraft;
import dev.drafting.knit.CopyCheck;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.TapedEdge;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.FabricChange;
import dev.drafting.knit.fabric.FabricComparison;
import dev.drafting.knit.fabric.GaugeMean;
import dev.drafting.knit.fabric.GaugeReading;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.TShirt;
import dev.drafting.knit.hem.FlareLimit;
import dev.drafting.knit.sewing.Needle;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodySizes;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.MadeToMeasure;
import java.io.Serializable;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Values of each class that can be stored: what garments are made of, and what else there is. */
final class SerialSamples {
  private SerialSamples() {}

  /** Those that are unlike each other, in the order of finding. */
  static Map<Class<?>, Set<Object>> byClass() {
    Map<Class<?>, Set<Object>> found = new LinkedHashMap<>();
    Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Object> open = new ArrayDeque<>(roots());
    while (!open.isEmpty()) {
      Object value = open.remove();
      if (seen.add(value)) {
        if (value instanceof Serializable) {
          found.computeIfAbsent(value.getClass(), type -> new LinkedHashSet<>()).add(value);
        }
        open.addAll(parts(value));
      }
    }
    return found;
  }

  private static List<Object> parts(Object value) {
    List<Object> parts = new ArrayList<>();
    if (value instanceof Collection<?> some) {
      parts.addAll(some);
    } else if (value instanceof Map<?, ?> map) {
      parts.addAll(map.keySet());
      parts.addAll(map.values());
    } else if (value instanceof Optional<?> maybe) {
      maybe.ifPresent(parts::add);
    } else if (value.getClass().getName().startsWith("dev.drafting")) {
      fields(value.getClass()).forEach(field -> add(parts, field, value));
    }
    return parts;
  }

  private static List<Field> fields(Class<?> type) {
    return Arrays.stream(type.getDeclaredFields())
        .filter(field -> !Modifier.isStatic(field.getModifiers()) && !field.getType().isPrimitive())
        .toList();
  }

  private static void add(List<Object> parts, Field field, Object value) {
    try {
      field.setAccessible(true);
      Optional.ofNullable(field.get(value)).ifPresent(parts::add);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Object> roots() {
    List<Object> roots = new ArrayList<>();
    Garment vest = GarmentFolder.read(Path.of("../examples/programs/garments/vest"));
    roots.add(vest);
    vest.makes().values().forEach(make -> addAnswers(roots, make));
    for (int seed = 0; seed < 60; seed++) {
      roots.add(RandomDraft.of(seed));
    }
    roots.addAll(others(vest));
    return roots;
  }

  private static void addAnswers(List<Object> roots, Draft make) {
    roots.addAll(
        List.of(
            make.strips(),
            make.findings(),
            make.passages(),
            make.cutPieces(),
            make.cutList(),
            make.goods(),
            make.sewing(),
            make.sewing().tapes(),
            make.orderOfWork(),
            make.cautions(),
            make.measures(),
            make.fabricChange(),
            make.compare(make.withName("other")),
            make.lay("body").plan(1, 0)));
  }

  /** What no draft is made of. */
  private static List<Object> others(Garment vest) {
    Pattern pattern = vest.pattern();
    Piece front = pattern.pieces().get(0);
    String edge = front.edges().get(0).name();
    EdgeRef first = new EdgeRef(front.name(), edge);
    Tracing tracing = vest.tracings().get(0);
    Draft make = vest.makes().values().iterator().next();
    Fabric jersey = Fabric.of("jersey", Structure.JERSEY, 0.4).withMass(180).withCurl(false);
    Length small = Length.mm(20);
    Length wide = Length.mm(500);
    Polyline square = Polyline.of(0, 0, 400, 0, 400, 400, 0, 400, 0, 0);
    UnnamedTracing unnamed =
        UnnamedTracing.of("front", Extent.WHOLE, square, List.of(new Point(0, 0)))
            .withoutCorner(new Point(400, 400));
    Body body = Body.of().with(BodyMeasure.BUST_GIRTH, Length.mm(900)).withAge(40);
    Curve round = Curve.from(square);
    Curve bend =
        Curve.of(
            new Line(new Point(0, 0), new Point(100, 0)),
            Arc.of(new Point(100, 10), Length.mm(10), Angle.degrees(-90), Angle.degrees(90)),
            new Line(new Point(110, 10), new Point(110, 100)));
    return List.of(
        WantedMeasure.girth("side", wide, Length.mm(520)),
        ChalkTable.of(make.cutPieces().get(0)),
        PatternTruing.of(pattern).evened(Length.mm(3)),
        Grading.of(pattern, "M", List.of()).with("L", 1).with("S", -1),
        GradeRule.of("front", "hem", "side", small, small),
        StripLay.of(wide).with(round, 2, Angle.ZERO, Angle.degrees(180)),
        Offset.of(List.of(OffsetEdge.of("round", round, small)))
            .withCorner(0, CornerTreatment.bevel()),
        Offset.ofOpen(List.of(OffsetEdge.of("bend", bend, small))).result(),
        Offset.ofOpen(List.of(OffsetEdge.of("bend", bend, small.negated()))).result(),
        front.corners(),
        Profile.of(new ProfileLine(LineRole.CUT, small)),
        Reshaping.of(pattern)
            .scaled(front.name(), 1.01, 1.02)
            .moved(first, new Vector(1, 2))
            .yielding(first)
            .keepingAnglesTo(first)
            .evened(small),
        SizeRun.of("M", Dimensions.of().with("chest", wide).withChoice("neck", "round"))
            .with("L", Dimensions.of()),
        Templates.installed(),
        DrawnRectangle.of(
            wide, wide, new Point(0, 0), new Point(100, 0), new Point(100, 90), new Point(0, 100)),
        RepeatedTracing.of(tracing, tracing),
        TapedHalf.of("front", Length.mm(600))
            .withHem(wide, small)
            .withUnderarm(wide, small)
            .withShoulder(Length.mm(120), small)
            .withNeck(Length.mm(90), small)
            .withAcross(wide, small)
            .withWidth(small, wide),
        Truing.of(tracing)
            .withSmoothing(Length.mm(2))
            .withStraight(tracing.edges().get(0).name())
            .withPointedCorner(tracing.edges().get(0).name())
            .withTracedOutside(tracing.edges().get(0).name(), small),
        unnamed,
        unnamed.stretches(),
        DraftDrawing.of(make),
        Label.of("a", new Point(1, 2), small).withAnchor(Anchor.END).asFinding(),
        Paper.LETTER,
        CopyCheck.of(make.measures(), make.measures()),
        TapedEdge.alongSeam("neck", wide, Angle.degrees(300)).withCorners(Angle.degrees(90)),
        Ease.of(wide, wide),
        FabricComparison.of(jersey, jersey.withTension(0.01)),
        FabricChange.of(jersey, jersey).withGirth(wide, wide),
        GaugeMean.of(GaugeReading.of(Length.mm(100), Length.mm(150), Length.mm(102))),
        FlareLimit.ofRadius(wide),
        Needle.of(jersey),
        body,
        BodySizes.women(),
        new TShirt().bodyRules(),
        Fit.ease(small),
        MadeToMeasure.of(new TShirt(), body, jersey).with("chest", Fit.stretchUsed(0.5)));
  }
}
