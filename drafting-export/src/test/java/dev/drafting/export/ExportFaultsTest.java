package dev.drafting.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.drafting.core.finding.DraftingException;
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
    assertEquals(3, Writer.export(isSecond).to(place, Progress.none()).size());
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
   * Each file is whole at once; all of them are, as soon as somebody has written to the folder
   * again, if only a file of another name.
   */
  @Test
  void aKilledProcessLeavesWholeFiles() throws Exception {
    for (int seed = 0; seed < KILLS; seed++) {
      Process writer = Writer.start(folder, FOR_EVER);
      Thread.sleep(300 + new Random(seed).nextInt(900));
      writer.destroyForcibly().waitFor();
      for (Map.Entry<String, String> file : Writer.contents(folder).entrySet()) {
        boolean whole =
            file.getValue().equals(first.get(file.getKey()))
                || file.getValue().equals(second.get(file.getKey()));
        assertTrue(whole, "part of " + file.getKey() + ", seed " + seed);
      }
      Path other =
          Export.of(TestGarment.vest("other")).svg().to(folder, Progress.none()).get(0).path();
      Files.delete(other);
      assertOneOrTheOther("after seed " + seed);
    }
  }

  /** As if the process had been killed after the first of its files. */
  @Test
  void whatAKilledProcessLeftIsMovedInFirst() throws IOException {
    write(false, folder);
    Path left = folder.resolve(".drafting-left");
    Files.createDirectories(left.resolve("new"));
    Files.writeString(left.resolve("moving"), folder.toRealPath().toString());
    for (Map.Entry<String, String> file : second.entrySet()) {
      boolean moved = file.getKey().endsWith(".svg");
      Path place = moved ? folder : left.resolve("new");
      Files.writeString(place.resolve(file.getKey()), file.getValue());
    }
    Path other =
        Export.of(TestGarment.vest("other")).svg().to(folder, Progress.none()).get(0).path();
    Files.delete(other);
    assertEquals(second, Writer.contents(folder));
    assertNothingHidden();
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
          assertEquals(3, done.get());
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
