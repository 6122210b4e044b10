package dev.drafting.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.ProjectorPdf;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.knit.Draft;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportTest {
  @TempDir Path work;

  private static Export all(String name) {
    return Export.of(TestGarment.vest(name)).pdf(Paper.A4).pdf(Paper.LETTER).svg().sheet();
  }

  private List<String> everythingIn(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      return paths.map(p -> folder.relativize(p).toString()).sorted().toList();
    }
  }

  @Test
  void filesAreWrittenReportedAndNothingElseIsLeft() throws IOException {
    List<String> steps = new ArrayList<>();
    Path folder = work.resolve("made/vest");
    List<WrittenFile> files =
        all("Boathouse vest")
            .to(folder, (what, done, of) -> steps.add(done + "/" + of + " " + what));
    List<String> names = files.stream().map(f -> f.path().getFileName().toString()).toList();
    assertEquals(
        List.of(
            "boathouse-vest-a4.pdf",
            "boathouse-vest-letter.pdf",
            "boathouse-vest.svg",
            "boathouse-vest-making-up.html"),
        names);
    for (WrittenFile file : files) {
      assertEquals(Files.size(file.path()), file.bytes());
      assertTrue(file.toString().endsWith(" kB"), file.toString());
    }
    assertEquals("0/4 writing boathouse-vest-a4.pdf", steps.get(0));
    assertEquals("4/4 done", steps.get(4));
    assertEquals(4 + 3, everythingIn(work).size());
  }

  @Test
  void theSameDraftGivesTheSameBytesAndReplacesOldFiles() throws IOException {
    List<WrittenFile> first = all("vest").to(work.resolve("a"), Progress.none());
    Files.writeString(work.resolve("a/keep.txt"), "kept");
    List<byte[]> bytes = new ArrayList<>();
    for (WrittenFile file : first) {
      bytes.add(Files.readAllBytes(file.path()));
      Files.writeString(file.path(), "old");
    }
    List<WrittenFile> second = all("vest").to(work.resolve("a"), Progress.none());
    for (int i = 0; i < bytes.size(); i++) {
      assertArrayEquals(bytes.get(i), Files.readAllBytes(second.get(i).path()));
    }
    assertEquals("kept", Files.readString(work.resolve("a/keep.txt")));
  }

  @Test
  void aFailureLeavesEverythingAsItWas() throws IOException {
    Path folder = Files.createDirectory(work.resolve("out"));
    Files.writeString(folder.resolve("vest.svg"), "before");
    Format broken =
        new Format() {
          @Override
          public String fileEnding() {
            return ".broken";
          }

          @Override
          public void write(Drawing drawing, OutputStream out) throws IOException {
            out.write(1);
            throw new IOException("disk full");
          }
        };
    Export export = Export.of(TestGarment.vest("vest")).svg().format(broken);
    assertThrows(IOException.class, () -> export.to(folder, Progress.none()));
    assertEquals(List.of("", "out", "out/vest.svg"), everythingIn(work));
    assertEquals("before", Files.readString(folder.resolve("vest.svg")));
  }

  /** A folder lies where the last file should go: the files already moved in are put back. */
  @Test
  void aTargetThatCannotBeReplacedUndoesTheOthers() throws IOException {
    Path folder = Files.createDirectory(work.resolve("out"));
    Files.writeString(folder.resolve("vest.svg"), "before");
    Path blocked = folder.resolve("missing/vest");
    Export export = Export.of(TestGarment.vest("vest")).svg();
    Files.writeString(folder.resolve("missing"), "a file, not a folder");
    assertThrows(IOException.class, () -> export.to(blocked, Progress.none()));
    assertEquals(List.of("", "missing", "vest.svg"), everythingIn(folder));
    assertEquals(List.of("", "out", "out/missing", "out/vest.svg"), everythingIn(work));
  }

  @Test
  void anInterruptedThreadCancelsAndLeavesNothing() throws IOException {
    Progress interrupting = (what, done, of) -> Thread.currentThread().interrupt();
    Path folder = work.resolve("out");
    DraftingException cancelled =
        assertThrows(DraftingException.class, () -> all("vest").to(folder, interrupting));
    assertTrue(Thread.interrupted());
    assertEquals("cancelled", cancelled.what());
    assertEquals(List.of(""), everythingIn(work));
  }

  @Test
  void namesCannotLeaveTheFolder() throws IOException {
    Path folder = work.resolve("out");
    List<WrittenFile> files =
        Export.of(TestGarment.vest("../../\u0000/e\u0301vil")).svg().to(folder, Progress.none());
    assertEquals(folder.resolve("evil.svg"), files.get(0).path());
    assertFalse(Files.exists(work.resolve("evil.svg")));
  }

  @Test
  void theDraftItselfIsReadAgain() throws IOException {
    Draft vest = TestGarment.vest("vest");
    List<WrittenFile> files = Export.of(vest).store().to(work, Progress.none());
    assertEquals(work.resolve("vest.draft.json"), files.get(0).path());
    assertEquals(vest, StoredDraft.read(files.get(0).path()).draft());
    StoredDraft other = StoredDraft.of(vest.withName("other"));
    assertThrows(DraftingException.class, () -> Export.of(vest).store(other));
  }

  @Test
  void oneFileGoesToAStreamAndNoMore() throws IOException {
    Export svg = Export.of(TestGarment.vest("vest")).svg();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    svg.to(out, Progress.none());
    List<WrittenFile> files = svg.to(work, Progress.none());
    assertArrayEquals(Files.readAllBytes(files.get(0).path()), out.toByteArray());
    Export two = svg.hpgl();
    DraftingException refused =
        assertThrows(DraftingException.class, () -> two.to(out, Progress.none()));
    assertEquals(".svg, .plt", refused.value());
    Progress interrupting = (what, done, of) -> Thread.currentThread().interrupt();
    ByteArrayOutputStream nothing = new ByteArrayOutputStream();
    assertThrows(DraftingException.class, () -> svg.to(nothing, interrupting));
    assertTrue(Thread.interrupted());
    assertEquals(0, nothing.size());
  }

  @Test
  void widePaperAndProjectorHaveFilesOfTheirOwn() throws IOException {
    List<WrittenFile> files =
        Export.of(TestGarment.vest("vest"))
            .wide(Paper.A0)
            .roll(Length.inches(36))
            .projector(ProjectorPdf.of())
            .projector(ProjectorPdf.of().onDark().mirrored())
            .to(work, Progress.none());
    assertEquals(
        List.of(
            "vest-wide-a0.pdf",
            "vest-roll-914mm.pdf",
            "vest-projector.pdf",
            "vest-projector-dark-mirrored.pdf"),
        files.stream().map(f -> f.path().getFileName().toString()).toList());
  }

  @Test
  void nothingAskedForIsRefused() {
    Export nothing = Export.of(TestGarment.vest("vest"));
    assertThrows(DraftingException.class, () -> nothing.to(work, Progress.none()));
    assertEquals("vest to -a4.pdf, .svg", nothing.pdf(Paper.A4).svg().toString());
  }
}
