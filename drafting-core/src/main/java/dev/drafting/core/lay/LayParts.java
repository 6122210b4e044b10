package dev.drafting.core.lay;

import dev.drafting.core.cut.CutNotch;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Cutting;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What has to be laid on a cloth, as often as it is laid there, and what is to be said about it.
 */
final class LayParts {
  private static final Length FOLD_GAP = Length.mm(0.001);
  private static final Length JOIN = Length.mm(7);
  private static final String MIRRORED = ", mirrored";

  private final Cloth cloth;
  private final List<LayPart> parts = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  LayParts(Cloth cloth) {
    this.cloth = cloth;
  }

  List<LayPart> parts() {
    return parts;
  }

  List<String> notes() {
    return notes;
  }

  private boolean isDouble() {
    return cloth.fold() != Cloth.Fold.SINGLE;
  }

  /** A piece, and the label of its notch that lies on a repeat, or null. */
  void add(CutPiece piece, @Nullable String notch) {
    int from = parts.size();
    addTimes(piece, piece.name());
    if (notch == null) {
      return;
    }
    Point at = notch(piece, notch).at();
    Transform laid = laid(piece);
    for (int i = from; i < parts.size(); i++) {
      LayPart part = parts.get(i);
      boolean mirrored = part.name().endsWith(MIRRORED);
      Point there =
          mirrored
              ? mirroredGrain(piece.grain()).apply(Transform.mirrorInFold().apply(at))
              : laid.apply(at);
      parts.set(i, part.withOnRepeat(there));
    }
  }

  /** Refuses a notch that the piece does not have. */
  static void checkNotch(CutPiece piece, String label) {
    Objects.requireNonNull(notch(piece, label));
  }

  private static CutNotch notch(CutPiece piece, String label) {
    return piece.notches().stream()
        .filter(notch -> notch.label().equals(label))
        .findFirst()
        .orElseThrow(
            () ->
                DraftingException.of("the piece has no such notch")
                    .at(piece.name())
                    .value(label)
                    .accepted(
                        piece.notches().isEmpty()
                            ? "a piece with notches"
                            : piece.notches().stream()
                                .map(CutNotch::label)
                                .distinct()
                                .collect(Collectors.joining(", "))));
  }

  private static Transform laid(CutPiece piece) {
    return Transform.rotation(new Point(0, 0), Angle.degrees(180).minus(piece.grain()));
  }

  private void addTimes(CutPiece piece, String name) {
    Cutting cutting = piece.piece().cutting();
    Transform laid = laid(piece);
    switch (cutting.kind()) {
      case ON_FOLD -> {
        boolean upright = Math.abs(piece.grain().toDegrees() - 90) < 1e-9;
        if (cloth.fold().isBelow() && upright) {
          repeat(
              cutting.times(),
              new LayPart(
                  name, piece.cutLine().map(laid), toCut(piece).map(laid), true, 2, false, null));
        } else {
          Curve drawn = toCut(piece);
          Curve whole = drawn.then(drawn.mirrored().reversed()).map(laid);
          repeat(cutting.times(), LayPart.open(name, whole, 1, false));
        }
      }
      case PAIRS -> {
        Curve drawn = piece.cutLine().map(laid);
        if (isDouble()) {
          repeat(cutting.times(), LayPart.open(name, drawn, 2, false));
        } else {
          Curve mirrored = piece.cutLine().mirrored().map(mirroredGrain(piece.grain()));
          repeat(cutting.times(), LayPart.open(name, drawn, 1, false));
          repeat(cutting.times(), LayPart.open(name + MIRRORED, mirrored, 1, false));
        }
      }
      case SINGLE -> {
        repeat(cutting.times(), LayPart.open(name, piece.cutLine().map(laid), 1, false));
        if (isDouble() && cloth.fold() != Cloth.Fold.PARTLY && !notes.contains(oneLayer(name))) {
          notes.add(oneLayer(name));
        }
      }
    }
  }

  private static String oneLayer(String name) {
    return name + " is cut from one of the layers alone";
  }

  /** The mirror image has its grain mirrored too. */
  private static Transform mirroredGrain(Angle grain) {
    return Transform.rotation(new Point(0, 0), grain);
  }

  private void repeat(int times, LayPart part) {
    for (int i = 0; i < times; i++) {
      parts.add(part);
    }
  }

  /** What is cut of half a piece: its outline from fold to fold. */
  private static Curve toCut(CutPiece half) {
    List<Segment> free = new ArrayList<>();
    List<Segment> segments = half.cutLine().segments();
    int n = segments.size();
    int first = 0;
    for (int i = 0; i < n; i++) {
      if (isOnFold(segments.get(i)) && !isOnFold(segments.get((i + 1) % n))) {
        first = i + 1;
      }
    }
    for (int i = 0; i < n; i++) {
      Segment segment = segments.get((first + i) % n);
      if (!isOnFold(segment)) {
        free.add(segment);
      }
    }
    return Curve.of(free);
  }

  private static boolean isOnFold(Segment segment) {
    double gap = FOLD_GAP.toMm();
    return Math.abs(segment.start().x()) < gap
        && Math.abs(segment.end().x()) < gap
        && Math.abs(segment.pointAt(0.5).x()) < gap;
  }

  /** A strip along the selvage. */
  void addStripAlong(String name, Length length, Length width) {
    parts.add(LayPart.open(name, rectangle(length, width), 1, true));
  }

  private static Curve rectangle(Length along, Length across) {
    double w = along.toMm();
    double h = across.toMm();
    return Curve.polyline(
        new Point(0, 0), new Point(w, 0), new Point(w, h), new Point(0, h), new Point(0, 0));
  }

  /**
   * Strips lie across the cloth, where it stretches most. On doubled cloth two that are alike are
   * cut at once; one that is wider than the table lies on the fold; one too long is pieced.
   */
  void addStrips(String name, Length length, Length width, int times) {
    Length table = cloth.tableWidth();
    boolean doubled = cloth.fold() == Cloth.Fold.LENGTHWISE || cloth.fold() == Cloth.Fold.TUBULAR;
    Length room = doubled ? table.times(2) : single();
    int count = 1;
    while (share(length, count).compareTo(room) > 0) {
      count++;
      if (room.compareTo(JOIN.times(4)) <= 0) {
        throw DraftingException.of("the cloth is too narrow for a strip")
            .at(name)
            .value(room.text(LengthUnit.MM))
            .accepted("more than " + JOIN.times(4).text(LengthUnit.MM));
      }
    }
    Length each = share(length, count);
    if (count > 1) {
      notes.add(
          name
              + " is pieced from "
              + count
              + " parts of "
              + each.text(LengthUnit.CM)
              + ", "
              + JOIN.text(LengthUnit.MM)
              + " sewn in at each join");
    }
    addStripParts(name, each, width, count * times, doubled);
    boolean alone =
        doubled ? count * times % 2 == 1 && fits(each) : cloth.fold() != Cloth.Fold.PARTLY;
    if (isDouble() && alone && !notes.contains(oneLayer(name))) {
      notes.add(oneLayer(name));
    }
  }

  private void addStripParts(String name, Length each, Length width, int parts, boolean doubled) {
    if (!doubled) {
      repeat(parts, LayPart.open(name, rectangle(width, each), 1, true));
    } else if (!fits(each)) {
      Curve half = rectangle(width, each.dividedBy(2));
      Curve toCut = Curve.of(half.segments().subList(1, half.segments().size()));
      repeat(parts, new LayPart(name, half, toCut, true, 2, true, null));
    } else {
      repeat(parts / 2, LayPart.open(name, rectangle(width, each), 2, true));
      repeat(parts % 2, LayPart.open(name, rectangle(width, each), 1, true));
    }
  }

  private boolean fits(Length strip) {
    return strip.compareTo(cloth.tableWidth()) <= 0;
  }

  /** How wide the cloth lies in one layer. */
  private Length single() {
    return cloth.fold() == Cloth.Fold.PARTLY
        ? cloth.tableWidth().minus(cloth.turnedOver())
        : cloth.tableWidth();
  }

  private static Length share(Length length, int count) {
    return length.plus(JOIN.times(2.0 * (count - 1))).dividedBy(count);
  }
}
