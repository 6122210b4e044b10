package dev.drafting.export.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder holds the old files or the new ones, or says that it holds both. */
class FileSetTest {
  private static final List<String> NAMES = List.of("a.txt", "b.txt", "c.txt");

  @TempDir Path work;
  private Path folder;

  @BeforeEach
  void writeTheOldSet() throws IOException {
    folder = Files.createDirectory(work.resolve("out"));
    write("old");
  }

  private void write(String text) throws IOException {
    try (FileSet files = FileSet.into(folder)) {
      add(files, text);
      assertEquals(NAMES, List.copyOf(files.moveIn().keySet()));
    }
  }

  private static void add(FileSet files, String text) throws IOException {
    for (String name : NAMES) {
      try (OutputStream out = files.open(name)) {
        out.write(text.getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  private Map<String, String> contents() throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        String name = file.getFileName().toString();
        contents.put(name, Files.isDirectory(file) ? "a folder" : Files.readString(file));
      }
    }
    return contents;
  }

  private static Map<String, String> all(String text) {
    Map<String, String> all = new TreeMap<>();
    NAMES.forEach(name -> all.put(name, text));
    return all;
  }

  /** As a process leaves the folder that is killed after so many of its moves. */
  private void killedAfter(int moves, Path hidden) throws IOException {
    Path rest = Files.createDirectories(hidden.resolve("new"));
    for (String name : NAMES) {
      boolean moved = NAMES.indexOf(name) < moves;
      Files.writeString((moved ? folder : rest).resolve(name), "new");
    }
    new Notice(folder).put(NAMES, hidden);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void theNextSetMovesInWhatWasLeft(int moves) throws IOException {
    killedAfter(moves, folder.resolve(".drafting-7"));
    try (FileSet files = FileSet.into(folder)) {
      assertEquals(Map.of(), files.moveIn());
    }
    assertEquals(all("new"), contents());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void theNextReaderMovesInWhatWasLeft(int moves) throws IOException {
    killedAfter(moves, work.resolve(".drafting-7"));
    FileSet.finishBeside(folder.resolve("b.txt"));
    assertEquals(all("new"), contents());
    assertFalse(Files.exists(work.resolve(".drafting-7")));
  }

  @Test
  void theNoteNamesTheFilesAndSaysWhatToDo() throws IOException {
    killedAfter(1, folder.resolve(".drafting-7"));
    String note = Files.readString(folder.resolve("files-being-replaced.txt"));
    NAMES.forEach(name -> assertTrue(note.contains(name), note));
    assertTrue(note.contains("Do not cut or sew from them yet."), note);
  }

  /** Somebody has deleted the rest of the new set, or put a note there that leads elsewhere. */
  @ParameterizedTest
  @ValueSource(strings = {"", ".drafting-8", "../out", "/", ".", "..", ".drafting-../out"})
  void aMixtureThatCannotBeEndedIsRefused(String named) throws IOException {
    killedAfter(1, folder.resolve(".drafting-7"));
    Path note = folder.resolve(Notice.NAME);
    Files.writeString(note, Files.readString(note).replace(".drafting-7", named));
    Map<String, String> before = contents();
    Path file = folder.resolve("b.txt");
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> FileSet.finishBeside(file));
    assertEquals("files of two sets lie side by side and cannot be told apart", refusal.what());
    assertThrows(DraftingException.class, () -> write("newer"));
    assertEquals(before, contents());
    Files.delete(note);
    write("newer");
    before.keySet().removeAll(NAMES);
    before.remove(Notice.NAME);
    before.putAll(all("newer"));
    assertEquals(before, contents());
  }

  @Test
  void aNoteAsLongAsADiskIsNotRead() throws IOException {
    Files.write(folder.resolve(Notice.NAME), new byte[2_000_000]);
    Path file = folder.resolve("b.txt");
    assertThrows(DraftingException.class, () -> FileSet.finishBeside(file));
  }

  /** The last file cannot take the place of a folder; the first ones are put back. */
  @Test
  void aMoveThatFailsLeavesTheOldSet() throws IOException {
    Files.delete(folder.resolve("c.txt"));
    Files.createDirectories(folder.resolve("c.txt").resolve("kept"));
    Map<String, String> before = contents();
    assertThrows(IOException.class, () -> write("new"));
    assertEquals(before, contents());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", ".", "..", ".hidden", "a/b", "a\\b", "/a", "C:a", "a\0", Notice.NAME, "a.txt"})
  void aNameThatLeadsElsewhereIsRefused(String name) throws IOException {
    try (FileSet files = FileSet.into(folder)) {
      add(files, "new");
      assertThrows(DraftingException.class, () -> files.open(name));
    }
    assertEquals(all("old"), contents());
  }

  @Test
  void aSetThatIsNotMovedInLeavesNothing() throws IOException {
    try (FileSet files = FileSet.into(folder)) {
      add(files, "new");
    }
    assertEquals(all("old"), contents());
  }

  @Test
  void theSizesAreInTheOrderOfMaking() throws IOException {
    List<String> backwards = new ArrayList<>(NAMES);
    Collections.reverse(backwards);
    try (FileSet files = FileSet.into(folder)) {
      for (String name : backwards) {
        try (OutputStream out = files.open(name)) {
          out.write(name.charAt(0));
        }
      }
      assertEquals("{c.txt=1, b.txt=1, a.txt=1}", files.moveIn().toString());
    }
  }
}
