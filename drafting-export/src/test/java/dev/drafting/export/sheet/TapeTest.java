package dev.drafting.export.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import dev.drafting.export.TestGarment;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.pdf.Paper;
import dev.drafting.knit.Draft;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TapeTest {
  private static byte[] bytes(MakingUpSheet sheet) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    sheet.write(out);
    return out.toByteArray();
  }

  /** What the page says, without its style and pictures. */
  private static String words(Draft draft, Tape tape) throws IOException {
    String page = new String(bytes(MakingUpSheet.of(draft).withTape(tape)), StandardCharsets.UTF_8);
    return page.replaceAll("(?s)<(style|svg).*?</\\1>", " ")
        .replaceAll("<[^>]*>", " ")
        .replaceAll("[\\s\u00a0]+", " ");
  }

  @Test
  void bothIsWhatASheetBeginsWith() throws IOException {
    MakingUpSheet sheet = MakingUpSheet.of(TestGarment.vest("vest"));
    assertArrayEquals(bytes(sheet), bytes(sheet.withTape(Tape.BOTH)));
    assertEquals("making-up sheet of vest", sheet.toString());
    assertEquals("making-up sheet of vest, in inches", sheet.withTape(Tape.INCH).toString());
    assertEquals("making-up sheet of vest, in centimetres", sheet.withTape(Tape.CM).toString());
  }

  /**
   * The square that proves the scale is the one thing that a sheet in centimetres says in inches.
   */
  @Test
  void aSheetInCentimetresHasNoInches() throws IOException {
    String words = words(TestGarment.vest("vest"), Tape.CM);
    assertTrue(words.contains("chest, all round 92 cm chest, lying flat 46 cm"), words);
    assertEquals(
        List.of("4 in"),
        List.of(words.split("(?=\\d+ in\\b)", -1)).stream()
            .skip(1)
            .map(rest -> rest.substring(0, rest.indexOf("in") + 2))
            .toList());
  }

  @Test
  void aSheetInInchesHasThemForEveryAmount() throws IOException {
    String words = words(TestGarment.vest("vest"), Tape.INCH);
    assertTrue(words.contains("chest, all round 36 1/4 in chest, lying flat 18 1/8 in"), words);
    String left =
        words
            .replaceAll("100 mm and 4 in", "")
            .replaceAll("[\\d.]+ (mm|cm) \\([\\d/ ]+( to [\\d/ ]+)? in\\)", "")
            .replaceAll("[\\d.]+ m \\([\\d/ ]+ yd\\)", "")
            .replaceAll("[\\d.]+ mm (long|wide)", "");
    for (String unit : List.of("mm", "cm", "m")) {
      assertFalse(left.matches(".*\\d " + unit + "\\b.*"), unit + " without inches: " + left);
    }
  }

  @Test
  void onPaperAsWell() {
    Drawing pages =
        MakingUpSheet.of(TestGarment.vest("vest")).withTape(Tape.INCH).pages(Paper.LETTER);
    String words =
        pages.groups().stream()
            .flatMap(page -> page.labels().stream())
            .map(Label::text)
            .collect(Collectors.joining(" "))
            .replaceAll("[\\s\u00a0]+", " ");
    assertTrue(words.contains("36 1/4 in"), words);
    assertFalse(words.contains("92 cm"), words);
  }

  @Test
  void inchesStandBehindMetricAmounts() {
    assertEquals(
        "Seam with 7 mm (1/4 in) allowance.",
        inches("Seam with 7 mm allowance."),
        "7 mm: 0.276 in");
    assertEquals("48 to 51 cm (18 7/8 to 20 1/8 in)", inches("48 to 51 cm"), "18.90 to 20.08 in");
    assertEquals("54.1 cm (21 1/4 in) by 42.5 mm (1 5/8 in)", inches("54.1 cm by 42.5 mm"));
    assertEquals("0.8 m (7/8 yd), 160 cm (63 in) wide", inches("0.8 m, 160 cm wide"));
  }

  /** A yard is 0.9144 m exactly: 1 m is 8.75 eighths, 1.8288 m are 2 yards and no more. */
  @Test
  void clothIsRoundedUp() {
    assertEquals("1 m (1 1/8 yd)", inches("1 m"));
    assertEquals("1.829 m (2 1/8 yd)", inches("1.829 m"));
    assertEquals("thread, about 70 m (76 5/8 yd)", inches("thread, about 70 m"));
  }

  @Test
  void whatIsNoAmountStays() {
    for (String sentence :
        List.of(
            "measure its squares: 100 mm and 4 in, to half a millimetre",
            "12 to 24 hours",
            "200 g/m2, 5 m/s, 3 m\u00b2",
            "needles 70 to 80 (10 to 12)",
            "A4cm, x1 cm2",
            "9 mm (3/8 in) wide")) {
      assertEquals(sentence, inches(sentence));
      assertEquals(sentence, Tape.CM.words(sentence));
    }
  }

  @Test
  void lengthsAreThoseOfTheTape() {
    Length length = Length.mm(591.6);
    assertEquals("59.2\u00a0cm (23\u00a01/4\u00a0in)", Tape.BOTH.length(length));
    assertEquals("59.2\u00a0cm", Tape.CM.length(length));
    assertEquals("23\u00a01/4\u00a0in", Tape.INCH.length(length), "23.29 in");
  }

  private static String inches(String sentence) {
    return Tape.INCH.words(sentence).replace('\u00a0', ' ');
  }
}
