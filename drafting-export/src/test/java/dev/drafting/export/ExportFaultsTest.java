package dev.drafting.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.store.StoredDraft;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever happens to an export, a folder holds the old files or the new files. {@code -Dkills=N}
 * says how many processes are killed.
 */
@EnabledOnOs(OS.LINUX)
class ExportFaultsTest {
  private static final int KILLS = Integer.getInteger("kills", 5);
  private static final int FOR_EVER = 1_000_000;
  private static final String NOTE = "files-being-replaced.txt";

  @TempDir Path work;
  private Path folder;
  private Map<String, String> first;
  private Map<String, String> second;

  @BeforeEach
  void writeBoth() throws IOException {
    folder = work.resolve("out");
    second = written(true);
    first = written(false);
    assertEquals(first.keySet(), second.keySet());
    first.forEach((name, text) -> assertNotEquals(text, second.get(name), name));
  }

  private Map<String, String> written(boolean isSecond) throws IOException {
    write(isSecond, folder);
    return Writer.contents(folder);
  }

  private static void write(boolean isSecond, Path place) throws IOException {
    assertEquals(Writer.FILES, Writer.export(isSecond).to(place, Progress.none()).size());
  }

  private void assertOneOrTheOther(String when) throws IOException {
    Map<String, String> now = Writer.contents(folder);
    assertTrue(now.equals(first) || now.equals(second), () -> "a mixture " + when);
  }

  private void assertNothingHidden() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(first.size(), all.count());
    }
  }

  /**
   * Each file is whole at once, and where old and new ones lie side by side the note says so; all
   * are of one set as soon as somebody has read one of them or written to the folder again. Every
   * other process is killed when the note appears, which chance would hardly ever hit.
   */
  @Test
  void aKilledProcessLeavesWholeFiles(TestReporter reporter) throws Exception {
    int noted = 0;
    int mixed = 0;
    for (int seed = 0; seed < KILLS; seed++) {
      Process writer = Writer.start(folder, FOR_EVER);
      Thread.sleep(300 + new Random(seed).nextInt(900));
      if (seed % 2 == 1) {
        awaitNote(seed);
      }
      writer.destroyForcibly().waitFor();
      Map<String, String> left = Writer.contents(folder);
      boolean hasNote = left.remove(NOTE) != null;
      left.forEach((name, text) -> assertTrue(isOneOf(name, text), "part of " + name));
      boolean isMixed = !left.equals(first) && !left.equals(second);
      assertTrue(hasNote || !isMixed, "a mixture that is not said, seed " + seed);
      noted += hasNote ? 1 : 0;
      mixed += isMixed ? 1 : 0;
      openAgain(seed);
      assertOneOrTheOther("after seed " + seed);
    }
    reporter.publishEntry(KILLS + " killed", noted + " left the note, " + mixed + " a mixture");
  }

  private boolean isOneOf(String name, String text) {
    return text.equals(first.get(name)) || text.equals(second.get(name));
  }

  /** The moment between two steps is spread by the seed. */
  private void awaitNote(int seed) {
    while (!Files.exists(folder.resolve(NOTE))) {
      Thread.onSpinWait();
    }
    long until = System.nanoTime() + new Random(seed).nextInt(500_000);
    while (System.nanoTime() < until) {
      Thread.onSpinWait();
    }
  }

  /** By reading a file, or by writing one of another name. */
  private void openAgain(int seed) throws IOException {
    if (seed % 4 < 2) {
      assertEquals("vest", StoredDraft.read(folder.resolve("vest.draft.json")).draft().name());
    } else {
      Files.delete(
          Export.of(TestGarment.vest("other")).svg().to(folder, Progress.none()).get(0).path());
    }
  }

  @Test
  void twoProcessesDoNotMixTheirFiles() throws Exception {
    for (int round = 0; round < 2; round++) {
      Process one = Writer.start(folder, 20);
      Process two = Writer.start(folder, 21);
      assertEquals(0, one.waitFor());
      assertEquals(0, two.waitFor());
      assertOneOrTheOther("of two processes");
      assertNothingHidden();
    }
  }

  @Test
  void manyThreadsDoNotMixTheirFiles() throws Exception {
    for (Path place : List.of(folder, work.resolve("new one"))) {
      List<Callable<Integer>> writers = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        boolean isSecond = i % 2 == 0;
        writers.add(() -> Writer.export(isSecond).to(place, Progress.none()).size());
      }
      ExecutorService threads = Executors.newFixedThreadPool(4);
      try {
        for (Future<Integer> done : threads.invokeAll(writers)) {
          assertEquals(Writer.FILES, done.get());
        }
      } finally {
        threads.shutdown();
      }
      folder = place;
      assertOneOrTheOther("of many threads");
      assertNothingHidden();
    }
  }

  @Test
  void anInterruptionAtAnyTimeLeavesWholeFiles() throws Exception {
    for (int seed = 0; seed < 40; seed++) {
      boolean isSecond = seed % 2 == 0;
      Throwable[] thrown = new Throwable[1];
      Thread writer =
          new Thread(
              () -> {
                try {
                  write(isSecond, folder);
                } catch (DraftingException | IOException e) {
                  thrown[0] = e;
                }
              });
      writer.start();
      Thread.sleep(new Random(seed).nextInt(30));
      writer.interrupt();
      writer.join();
      assertOneOrTheOther("after seed " + seed);
      assertNothingHidden();
      assertTrue(
          thrown[0] == null || thrown[0] instanceof DraftingException, () -> "it is " + thrown[0]);
    }
  }

  /** No file may grow beyond a size, which the process learns while it writes. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 8, 16, 64})
  void noRoomForAFileLeavesTheOldFiles(int blocks) throws Exception {
    String limited = "ulimit -f " + blocks + "; exec \"$@\"";
    Process writer = Writer.start(folder, 1, "sh", "-c", limited, "sh");
    assertEquals(2, writer.waitFor());
    assertEquals(first, Writer.contents(folder));
    assertNothingHidden();
  }

  /** A disk in memory, which only the administrator may make. */
  @ParameterizedTest
  @ValueSource(ints = {40, 100, 150, 200, 400})
  void aFullDiskLeavesTheOldFiles(int kilobytes) throws Exception {
    Path disk = Files.createDirectory(work.resolve("disk"));
    assumeTrue(
        run("mount", "-t", "tmpfs", "-o", "size=2m", "none", disk.toString()) == 0,
        "no disk can be made here");
    try {
      write(false, disk);
      byte[] rest = new byte[2 * 1024 * 1024];
      Path filling = disk.resolve(".filling");
      assertThrows(IOException.class, () -> Files.write(filling, rest));
      Files.write(filling, new byte[(int) Files.size(filling) - 1024 * kilobytes]);
      folder = disk;
      boolean full = false;
      try {
        write(true, disk);
      } catch (IOException e) {
        full = true;
      }
      Files.delete(filling);
      assertEquals(full ? first : second, Writer.contents(disk));
      assertNothingHidden();
      assertEquals(kilobytes < 200, full);
    } finally {
      assertEquals(0, run("umount", disk.toString()));
    }
  }

  private static int run(String... command) throws Exception {
    return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor();
  }

  /** Nothing can be made there, whoever asks. */
  @Test
  void aFolderThatCannotBeWrittenIsRefused() {
    Path readOnly = Path.of("/proc/self");
    assertThrows(IOException.class, () -> write(false, readOnly));
    Path below = readOnly.resolve("out");
    assertThrows(IOException.class, () -> write(false, below));
  }

  @Test
  void aLinkToAFolderIsFollowed() throws IOException {
    Path link = Files.createSymbolicLink(work.resolve("link"), folder);
    List<WrittenFile> files = Writer.export(true).to(link, Progress.none());
    assertEquals(link, files.get(0).path().getParent());
    assertEquals(second, Writer.contents(folder));
    assertTrue(Files.isSymbolicLink(link));
    assertNothingHidden();
  }

  /** A link in the place of a file is replaced; what it leads to is not touched. */
  @Test
  void aLinkInTheFolderIsNotFollowed() throws IOException {
    Path kept = Files.writeString(work.resolve("kept"), "kept");
    Files.delete(folder.resolve("vest.svg"));
    Files.createSymbolicLink(folder.resolve("vest.svg"), kept);
    write(true, folder);
    assertEquals("kept", Files.readString(kept));
    assertEquals(second, Writer.contents(folder));
  }
}
