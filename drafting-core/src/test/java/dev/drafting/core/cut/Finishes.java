package dev.drafting.core.cut;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.core.pattern.Vests;
import java.util.Map;

/** Finishes as other packages and other people write them, with the profiles of the plan. */
final class Finishes {
  private Finishes() {}

  record Other(String id, Profile profile) implements Finish {
    @Override
    public Map<String, String> settings() {
      return Map.of();
    }

    @Override
    public String describe() {
      return id;
    }
  }

  private static ProfileLine line(LineRole role, double mm) {
    return new ProfileLine(role, Length.mm(mm));
  }

  static Finish hemOnce(double depth) {
    return new Other(
        "hem turned once",
        Profile.of(
            line(LineRole.CUT, depth),
            line(LineRole.FOLD, 0),
            line(LineRole.TOPSTITCH, -(depth - 2))));
  }

  static Finish hemTwice(double turnIn, double depth) {
    return new Other(
        "hem turned twice",
        Profile.of(
            line(LineRole.CUT, turnIn + depth),
            line(LineRole.FOLD, 0),
            line(LineRole.FOLD, depth),
            line(LineRole.TOPSTITCH, -(depth - 2))));
  }

  static Finish foldedBand(double showing, double allowance) {
    return new Other(
        "folded band",
        Profile.of(line(LineRole.CUT, allowance - showing), line(LineRole.JOIN, -showing)));
  }

  static Finish wrappedBinding(double showing) {
    return new Other(
        "wrapped binding",
        Profile.of(
            line(LineRole.CUT, -0.5), line(LineRole.JOIN, -showing), line(LineRole.FOLD, 0)));
  }

  /** A finish that is not of the trade: cut there, and one line beside it. */
  static Finish oneLine(String id, double cut, double mm, LineRole role) {
    return new Other(id, Profile.of(line(LineRole.CUT, cut), line(role, mm)));
  }

  /** A vest with a banded neck, bound armholes and a hem, ready to be cut. */
  static Pattern vest() {
    Pattern pattern = Vests.seamed();
    for (String piece : new String[] {"front", "back"}) {
      pattern =
          pattern
              .withFinish(new EdgeRef(piece, "neck"), foldedBand(13, 7))
              .withFinish(new EdgeRef(piece, "armhole"), wrappedBinding(10))
              .withFinish(new EdgeRef(piece, "hem"), hemTwice(8, 20));
      pattern =
          pattern.withPiece(
              pattern.piece(piece).withNotch(Notch.of("side", Length.mm(150), "waist")));
    }
    return pattern;
  }
}
