package dev.drafting.core.offset;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;

/**
 * The stretch of a source segment that a strand is parallel to.
 *
 * @param segment the segment of the source edge
 * @param index its place in that edge, from 0
 * @param from the parameter where the stretch begins
 * @param to the parameter where it ends; equal to {@code from} for a straight continuation
 */
record Origin(Segment segment, int index, double from, double to) {
  private static final int NEWTON_STEPS = 60;

  /** The part of this stretch that is opposite two points of the strand at parameters u0 and u1. */
  Origin between(double u0, Point atU0, double u1, Point atU1) {
    double start = u0 == 0 ? from : opposite(u0, atU0);
    double end = u1 == 1 ? to : opposite(u1, atU1);
    return new Origin(segment, index, start, Math.max(start, end));
  }

  /** Nothing of the source, at the start or the end of it: what a straight continuation has. */
  Origin endOnly(boolean atEnd) {
    return atEnd ? new Origin(segment, index, to, to) : new Origin(segment, index, from, from);
  }

  /** The point of the exact parallel nearest to one of a curve that was fitted to it. */
  Point parallel(Point fitted, double distance) {
    if (from == to || !(segment instanceof Cubic)) {
      return fitted;
    }
    double t = foot(fitted, (from + to) / 2);
    return segment.pointAt(t).plus(Parallels.outward(segment.directionAt(t)).times(distance));
  }

  private double opposite(double u, Point point) {
    double guess = from + (to - from) * u;
    if (from == to || segment instanceof Arc) {
      return guess;
    }
    if (segment instanceof Line line) {
      Vector along = line.end().minus(line.start());
      return clamp(point.minus(line.start()).dot(along) / along.dot(along));
    }
    return foot(point, guess);
  }

  /**
   * Newton's method, kept between two places that lie on either side of the foot: near the radius
   * of curvature the distance hardly changes along the source, and Newton alone gets nowhere.
   */
  private double foot(Point point, double guess) {
    double before = from;
    double behind = to;
    double t = guess;
    for (int i = 0; i < NEWTON_STEPS; i++) {
      Vector way = segment.derivativeAt(t);
      double square = way.dot(way);
      if (square == 0) {
        break;
      }
      Vector off = point.minus(segment.pointAt(t));
      double ahead = off.dot(way);
      if (ahead > 0) {
        before = t;
      } else {
        behind = t;
      }
      double lambda = 1 - segment.curvatureAt(t) * way.cross(off) / Math.sqrt(square);
      double newton = t + ahead / square / lambda;
      double next = newton >= before && newton <= behind ? newton : (before + behind) / 2;
      if (Math.abs(next - t) < 1e-15) {
        break;
      }
      t = next;
    }
    return t;
  }

  private double clamp(double t) {
    return Math.max(from, Math.min(to, t));
  }
}
