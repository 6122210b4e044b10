package dev.drafting.core.assembly;

import dev.drafting.core.assembly.Face.Side;
import dev.drafting.core.assembly.Stitches.Stitch;
import dev.drafting.core.assembly.Stitches.Stretch;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Lays out the faces of a pattern and glues them at folds and seams. */
final class SurfaceBuilder {
  private final List<Face> faces = new ArrayList<>();
  private final List<Side> sides = new ArrayList<>();
  private final Map<EdgeRef, List<Stretch>> stretches = new HashMap<>();
  private final Map<Stretch, Integer> drawnSides = new HashMap<>();
  private final Map<Stretch, Integer> mirroredSides = new HashMap<>();

  private SurfaceBuilder() {}

  static Surface build(Pattern pattern, List<SewnSeam> seams) {
    return new SurfaceBuilder().surface(pattern, seams);
  }

  private Surface surface(Pattern pattern, List<SewnSeam> seams) {
    List<Stitch> stitches = new ArrayList<>();
    for (SewnSeam seam : seams) {
      stitches.addAll(Stitches.of(pattern, seam));
    }
    for (Stitch stitch : stitches) {
      if (!stitch.seam().isLapped()) {
        divide(stitch.first());
      }
      if (!stitch.seam().isMirrored()) {
        divide(stitch.second());
      }
    }
    stretches.values().forEach(s -> s.sort(Comparator.comparingDouble(Stretch::from)));
    Set<String> laidOn = pattern.patches().stream().map(Patch::piece).collect(Collectors.toSet());
    pattern.pieces().stream()
        .filter(piece -> !laidOn.contains(piece.name()))
        .forEach(this::addCopies);
    stitches.forEach(this::sew);
    return new Surface(List.copyOf(faces), List.copyOf(sides));
  }

  private void divide(Stretch stretch) {
    stretches.computeIfAbsent(stretch.edge(), e -> new ArrayList<>()).add(stretch);
  }

  private void addCopies(Piece piece) {
    Face drawn = addCopy(piece, false);
    if (piece.cutting().kind() == Cutting.Kind.SINGLE) {
      return;
    }
    Face mirrored = addCopy(piece, true);
    for (int i = 0; i < drawn.count; i++) {
      if (sides.get(drawn.first + i).edge.isOnFold()) {
        glue(drawn.first + i, mirrored.first + i, true, "");
      }
    }
  }

  private Face addCopy(Piece piece, boolean mirrored) {
    Face face = new Face(piece, mirrored, sides.size());
    faces.add(face);
    List<Corner> corners = piece.corners();
    for (int i = 0; i < corners.size(); i++) {
      Corner start = corners.get((i + corners.size() - 1) % corners.size());
      addSides(face, piece.edges().get(i), start);
    }
    face.count = sides.size() - face.first;
    return face;
  }

  private void addSides(Face face, Edge edge, Corner start) {
    EdgeRef ref = new EdgeRef(face.piece.name(), edge.name());
    List<Stretch> parts = stretches.getOrDefault(ref, List.of());
    for (int i = 0; i < parts.size(); i++) {
      Stretch part = parts.get(i);
      (face.mirrored ? mirroredSides : drawnSides).put(part, sides.size() + i);
    }
    sides.add(new Side(face, edge, start, start.interiorAngle().toRadians()));
    for (int i = 1; i < parts.size(); i++) {
      sides.add(new Side(face, edge, null, angleWithin(edge.curve(), parts.get(i).from())));
    }
  }

  private static double angleWithin(Curve curve, double along) {
    List<Curve> parts = curve.split(Length.mm(along));
    Vector arriving = parts.get(0).directionAt(parts.get(0).length());
    Vector leaving = parts.get(1).directionAt(Length.ZERO);
    return Math.PI - arriving.turnTo(leaving).toRadians();
  }

  private void sew(Stitch stitch) {
    if (stitch.seam().isLapped()) {
      lap(drawnSides.get(stitch.second()), stitch);
      lap(mirroredSides.get(stitch.second()), stitch);
    } else if (stitch.seam().isMirrored()) {
      glue(drawnSides, stitch.first(), mirroredSides, stitch.second(), stitch);
    } else {
      glue(drawnSides, stitch.first(), drawnSides, stitch.second(), stitch);
      glue(mirroredSides, stitch.first(), mirroredSides, stitch.second(), stitch);
    }
  }

  private void lap(@Nullable Integer under, Stitch by) {
    if (under != null) {
      sides.get(under).caught = true;
      sides.get(under).seam = by.seam().name();
    }
  }

  private void glue(
      Map<Stretch, Integer> of, Stretch one, Map<Stretch, Integer> to, Stretch other, Stitch by) {
    Integer first = of.get(one);
    Integer second = to.get(other);
    if (first != null && second != null) {
      glue(first, second, by.startToStart(), by.seam().name());
    }
  }

  private void glue(int one, int other, boolean startToStart, String seam) {
    link(one, other, startToStart, seam);
    link(other, one, startToStart, seam);
  }

  private void link(int from, int to, boolean startToStart, String seam) {
    Side side = sides.get(from);
    side.partner = to;
    side.startToStart = startToStart;
    side.seam = seam;
  }
}
