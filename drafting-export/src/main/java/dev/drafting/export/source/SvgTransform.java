package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The transform attribute of SVG (W3C, SVG 1.1, section 7.6): x' = a x + c y + e, y' = b x + d y +
 * f.
 */
record SvgTransform(double a, double b, double c, double d, double e, double f) {
  static final SvgTransform NONE = new SvgTransform(1, 0, 0, 1, 0, 0);

  private static final Pattern ONE = Pattern.compile("\\s*,?\\s*([A-Za-z]+)\\s*\\(([^()]*)\\)\\s*");
  private static final String ACCEPTED =
      "matrix, translate, scale, rotate, skewX or skewY with their numbers";

  static SvgTransform scale(double by) {
    return new SvgTransform(by, 0, 0, by, 0, 0);
  }

  double x(double x, double y) {
    return a * x + c * y + e;
  }

  double y(double x, double y) {
    return b * x + d * y + f;
  }

  /** First the other, then this one. */
  SvgTransform after(SvgTransform inner) {
    return new SvgTransform(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  static SvgTransform parse(String text) {
    SvgTransform all = NONE;
    Matcher matcher = ONE.matcher(text);
    int at = 0;
    while (at < text.length() && !text.substring(at).isBlank()) {
      if (!matcher.find(at) || matcher.start() != at) {
        throw DraftingException.of("this is no transform").value(text).accepted(ACCEPTED);
      }
      all = all.after(one(matcher.group(1), numbers(matcher.group(2))));
      at = matcher.end();
    }
    return all;
  }

  private static double[] numbers(String list) {
    String[] parts = list.strip().split("\\s*,\\s*|\\s+", -1);
    double[] numbers = new double[parts.length];
    for (int i = 0; i < parts.length; i++) {
      try {
        numbers[i] = Double.parseDouble(parts[i]);
      } catch (NumberFormatException e) {
        throw DraftingException.of("a number of a transform cannot be read")
            .value(parts[i])
            .accepted(ACCEPTED)
            .because(e);
      }
      if (!(Math.abs(numbers[i]) < 1e9)) {
        throw DraftingException.of("a number of a transform is too large")
            .value(parts[i])
            .accepted("less than 1e9");
      }
    }
    return numbers;
  }

  private static SvgTransform one(String name, double[] n) {
    String form = name + " " + n.length;
    return switch (form) {
      case "matrix 6" -> new SvgTransform(n[0], n[1], n[2], n[3], n[4], n[5]);
      case "translate 1" -> new SvgTransform(1, 0, 0, 1, n[0], 0);
      case "translate 2" -> new SvgTransform(1, 0, 0, 1, n[0], n[1]);
      case "scale 1" -> scale(n[0]);
      case "scale 2" -> new SvgTransform(n[0], 0, 0, n[1], 0, 0);
      case "rotate 1" -> rotate(n[0]);
      case "rotate 3" ->
          new SvgTransform(1, 0, 0, 1, n[1], n[2])
              .after(rotate(n[0]))
              .after(new SvgTransform(1, 0, 0, 1, -n[1], -n[2]));
      case "skewX 1" -> new SvgTransform(1, 0, Math.tan(Math.toRadians(n[0])), 1, 0, 0);
      case "skewY 1" -> new SvgTransform(1, Math.tan(Math.toRadians(n[0])), 0, 1, 0, 0);
      default -> throw DraftingException.of("this is no transform").value(form).accepted(ACCEPTED);
    };
  }

  private static SvgTransform rotate(double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return new SvgTransform(cos, sin, -sin, cos, 0, 0);
  }
}
