package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Walks along SVG path data (W3C, SVG 1.1, section 8.3: the grammar of path data; appendix F.6: the
 * centre of an arc) and marks points on it, closely enough that none of a curve is lost.
 */
final class SvgPath {
  /** Receives the points, in the units of the path. */
  interface Marks {
    void mark(double x, double y);
  }

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d{1,3})?");
  private static final String COMMANDS = "MmLlHhVvCcSsQqTtAaZz";
  private static final int PIECES = 48;
  private static final int PIECES_OF_LINE = 12;

  private final String data;
  private final Matcher number;
  private final Marks marks;
  private int at;
  private double x;
  private double y;
  private double startX;
  private double startY;
  private double controlX;
  private double controlY;
  private char last = ' ';

  private SvgPath(String data, Marks marks) {
    this.data = data;
    this.number = NUMBER.matcher(data);
    this.marks = marks;
  }

  /** Marks the points of one line without gaps. */
  static void walk(String data, Marks marks) {
    new SvgPath(data, marks).walk();
  }

  private void walk() {
    skip(false);
    char command = next();
    if (command != 'M' && command != 'm') {
      throw fault("path data does not begin with a move").value(command).accepted("M or m");
    }
    double[] first = numbers(2);
    x = first[0];
    y = first[1];
    startX = x;
    startY = y;
    marks.mark(x, y);
    command = command == 'M' ? 'L' : 'l';
    last = command;
    while (more()) {
      if (COMMANDS.indexOf(data.charAt(at)) >= 0) {
        command = next();
        if (command == 'M' || command == 'm') {
          throw fault("a path has a gap").value(command).accepted("one line for each edge");
        }
      } else if (last == 'Z' || last == 'z') {
        throw fault("numbers follow the end of a path").accepted("a command");
      }
      draw(command);
      last = command;
    }
  }

  private char next() {
    if (at >= data.length()) {
      throw fault("path data is empty").accepted("path data such as M 0 0 L 10 0");
    }
    char command = data.charAt(at);
    if (COMMANDS.indexOf(command) < 0) {
      throw fault("this is no command of path data").value(command).accepted(COMMANDS);
    }
    at++;
    return command;
  }

  private boolean more() {
    skip(true);
    return at < data.length();
  }

  private void skip(boolean comma) {
    boolean allowed = comma;
    while (at < data.length()) {
      char here = data.charAt(at);
      if (here == ',' && allowed) {
        allowed = false;
      } else if (here != ' ' && here != '\t' && here != '\n' && here != '\r' && here != '\f') {
        return;
      }
      at++;
    }
  }

  private void draw(char command) {
    boolean relative = Character.isLowerCase(command);
    double fromX = relative ? x : 0;
    double fromY = relative ? y : 0;
    switch (Character.toUpperCase(command)) {
      case 'L' -> {
        double[] n = numbers(2);
        line(fromX + n[0], fromY + n[1]);
      }
      case 'H' -> line(fromX + numbers(1)[0], y);
      case 'V' -> line(x, fromY + numbers(1)[0]);
      case 'C' -> {
        double[] n = numbers(6);
        cubic(fromX + n[0], fromY + n[1], fromX + n[2], fromY + n[3], fromX + n[4], fromY + n[5]);
      }
      case 'S' -> {
        double[] n = numbers(4);
        boolean smooth = "CcSs".indexOf(last) >= 0;
        cubic(
            smooth ? 2 * x - controlX : x,
            smooth ? 2 * y - controlY : y,
            fromX + n[0],
            fromY + n[1],
            fromX + n[2],
            fromY + n[3]);
      }
      case 'Q' -> {
        double[] n = numbers(4);
        quadratic(fromX + n[0], fromY + n[1], fromX + n[2], fromY + n[3]);
      }
      case 'T' -> {
        double[] n = numbers(2);
        boolean smooth = "QqTt".indexOf(last) >= 0;
        quadratic(
            smooth ? 2 * x - controlX : x,
            smooth ? 2 * y - controlY : y,
            fromX + n[0],
            fromY + n[1]);
      }
      case 'A' -> {
        double[] n = arcNumbers();
        arc(n, fromX + n[5], fromY + n[6]);
      }
      default -> line(startX, startY);
    }
  }

  private double[] numbers(int count) {
    double[] found = new double[count];
    for (int i = 0; i < count; i++) {
      found[i] = number();
    }
    return found;
  }

  private double number() {
    skip(true);
    if (!number.find(at) || number.start() != at) {
      throw fault("a number is missing in path data")
          .value(data.substring(at, Math.min(at + 12, data.length())))
          .accepted("numbers with decimal points");
    }
    at = number.end();
    double value = Double.parseDouble(number.group());
    if (!(Math.abs(value) < 1e9)) {
      throw fault("a number of path data is too large").value(value).accepted("less than 1e9");
    }
    return value;
  }

  /** Radii, turn, two flags (a single figure each, perhaps without a space), and the end. */
  private double[] arcNumbers() {
    double[] found = new double[7];
    for (int i = 0; i < 7; i++) {
      found[i] = i == 3 || i == 4 ? flag() : number();
    }
    return found;
  }

  private double flag() {
    skip(true);
    char flag = at < data.length() ? data.charAt(at) : ' ';
    if (flag != '0' && flag != '1') {
      throw fault("a flag of an arc is missing").value(flag).accepted("0 or 1");
    }
    at++;
    return flag - '0';
  }

  private void line(double toX, double toY) {
    for (int i = 1; i < PIECES_OF_LINE; i++) {
      double t = (double) i / PIECES_OF_LINE;
      marks.mark(x + t * (toX - x), y + t * (toY - y));
    }
    end(toX, toY, toX, toY);
  }

  private void cubic(double x1, double y1, double x2, double y2, double toX, double toY) {
    for (int i = 1; i < PIECES; i++) {
      double t = (double) i / PIECES;
      double s = 1 - t;
      marks.mark(
          s * s * s * x + 3 * s * s * t * x1 + 3 * s * t * t * x2 + t * t * t * toX,
          s * s * s * y + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t * t * t * toY);
    }
    end(toX, toY, x2, y2);
  }

  private void quadratic(double x1, double y1, double toX, double toY) {
    for (int i = 1; i < PIECES; i++) {
      double t = (double) i / PIECES;
      double s = 1 - t;
      marks.mark(
          s * s * x + 2 * s * t * x1 + t * t * toX, s * s * y + 2 * s * t * y1 + t * t * toY);
    }
    end(toX, toY, x1, y1);
  }

  private void end(double toX, double toY, double besideX, double besideY) {
    x = toX;
    y = toY;
    controlX = besideX;
    controlY = besideY;
    marks.mark(x, y);
  }

  private void arc(double[] n, double toX, double toY) {
    double rx = Math.abs(n[0]);
    double ry = Math.abs(n[1]);
    if (rx == 0 || ry == 0 || (toX == x && toY == y)) {
      line(toX, toY);
      return;
    }
    double cos = Math.cos(Math.toRadians(n[2]));
    double sin = Math.sin(Math.toRadians(n[2]));
    double halfX = (x - toX) / 2;
    double halfY = (y - toY) / 2;
    double px = cos * halfX + sin * halfY;
    double py = cos * halfY - sin * halfX;
    double grow = Math.max(1, Math.sqrt(px * px / (rx * rx) + py * py / (ry * ry)));
    rx *= grow;
    ry *= grow;
    double inside = rx * rx * ry * ry - rx * rx * py * py - ry * ry * px * px;
    double root =
        Math.sqrt(Math.max(inside, 0) / (rx * rx * py * py + ry * ry * px * px))
            * (n[3] == n[4] ? -1 : 1);
    double cx = root * rx * py / ry;
    double cy = -root * ry * px / rx;
    double from = Math.atan2((py - cy) / ry, (px - cx) / rx);
    double to = Math.atan2((-py - cy) / ry, (-px - cx) / rx);
    double turn = to - from;
    if (n[4] == 1 && turn < 0) {
      turn += 2 * Math.PI;
    } else if (n[4] == 0 && turn > 0) {
      turn -= 2 * Math.PI;
    }
    double middleX = (x + toX) / 2 + cos * cx - sin * cy;
    double middleY = (y + toY) / 2 + sin * cx + cos * cy;
    for (int i = 1; i < PIECES; i++) {
      double angle = from + turn * i / PIECES;
      double u = rx * Math.cos(angle);
      double v = ry * Math.sin(angle);
      marks.mark(middleX + cos * u - sin * v, middleY + sin * u + cos * v);
    }
    end(toX, toY, toX, toY);
  }

  private static DraftingException fault(String what) {
    return DraftingException.of(what);
  }
}
