package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.folder.FileSet;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A text file line by line: strict UTF-8, with or without a byte order mark, with any kind of line
 * end (all are handed on as one line feed). Neither a line nor the number of lines may grow beyond
 * what the reader of the file has stated, nor the whole beyond 16 MB, and no more than one line is
 * held in memory.
 */
final class StrictText extends Reader {
  private static final int LARGEST_BYTES = 16_000_000;
  private static final int CHUNK = 8_192;
  private static final int LINE_FEED = '\n';
  private static final int CARRIAGE_RETURN = '\r';

  private final String name;
  private final InputStream bytes;
  private final byte[] chunk = new byte[CHUNK];
  private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
  private final int longestLine;
  private final int mostLines;
  private int chunkSize;
  private int chunkTaken;
  private int line;
  private int read;
  private boolean afterCarriageReturn;
  private String text = "";
  private int taken;

  private StrictText(String name, InputStream bytes, int longestLine, int mostLines) {
    this.name = name;
    this.bytes = bytes;
    this.longestLine = longestLine;
    this.mostLines = mostLines;
  }

  /** Opens a plain file; {@code longestLine} in bytes. */
  static StrictText open(Path file, int longestLine, int mostLines) {
    String name = name(file);
    FileSet.finishBeside(file);
    if (!Files.exists(file)) {
      throw DraftingException.of("the file is missing").at(name).accepted("a text file");
    }
    if (!Files.isRegularFile(file)) {
      throw DraftingException.of("this is no plain file").at(name).accepted("a text file");
    }
    try {
      return new StrictText(name, Files.newInputStream(file), longestLine, mostLines);
    } catch (IOException e) {
      throw unreadable(name, e);
    }
  }

  static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? file.toString() : last.toString();
  }

  static DraftingException unreadable(String name, Exception cause) {
    return DraftingException.of("the file cannot be read")
        .at(name)
        .accepted("a text file that you may read")
        .because(cause);
  }

  /** The line that was handed out last, counted from 1. */
  int line() {
    return line;
  }

  /** The text of the line that was handed out last. */
  String lastLine() {
    return text.strip();
  }

  /** The next line without its end, or what is left of one; none after the last. */
  Optional<String> readLine() throws IOException {
    if (taken == text.length() && !nextLine()) {
      return Optional.empty();
    }
    int end = text.length() - (text.endsWith("\n") ? 1 : 0);
    String rest = text.substring(taken, end);
    taken = text.length();
    return Optional.of(rest);
  }

  @Override
  public int read(char[] target, int from, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (taken == text.length() && !nextLine()) {
      return -1;
    }
    int count = Math.min(length, text.length() - taken);
    text.getChars(taken, taken + count, target, from);
    taken += count;
    return count;
  }

  private boolean nextLine() throws IOException {
    byte[] buffer = new byte[256];
    int size = 0;
    int next = firstByteOfLine();
    if (next < 0) {
      return false;
    }
    line++;
    if (line > mostLines) {
      throw at(DraftingException.of("the file is too long").accepted(words(mostLines, "lines")));
    }
    while (next >= 0 && next != LINE_FEED && next != CARRIAGE_RETURN) {
      if (size == longestLine) {
        throw at(
            DraftingException.of("the line is too long").accepted(words(longestLine, "bytes")));
      }
      if (size == buffer.length) {
        buffer = Arrays.copyOf(buffer, Math.min(2 * size, longestLine));
      }
      buffer[size++] = (byte) next;
      next = nextByte();
    }
    afterCarriageReturn = next == CARRIAGE_RETURN;
    read += size;
    if (read > LARGEST_BYTES) {
      throw at(DraftingException.of("the file is too large").accepted("at most 16 MB"));
    }
    text = decoded(buffer, size) + (next < 0 ? "" : "\n");
    taken = 0;
    return !text.isEmpty() || nextLine();
  }

  private int firstByteOfLine() throws IOException {
    int first = nextByte();
    return afterCarriageReturn && first == LINE_FEED ? nextByte() : first;
  }

  private int nextByte() throws IOException {
    if (chunkTaken == chunkSize) {
      chunkSize = Math.max(0, bytes.read(chunk));
      chunkTaken = 0;
    }
    return chunkSize == 0 ? -1 : chunk[chunkTaken++] & 0xFF;
  }

  private String decoded(byte[] buffer, int size) {
    try {
      CharBuffer characters = decoder.decode(ByteBuffer.wrap(buffer, 0, size));
      String decoded = characters.toString();
      return line == 1 && decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded;
    } catch (CharacterCodingException e) {
      throw at(
          DraftingException.of("the text is not UTF-8")
              .value(new String(buffer, 0, size, StandardCharsets.ISO_8859_1).strip())
              .accepted("a text file stored as UTF-8"));
    }
  }

  private DraftingException at(DraftingException fault) {
    return fault.at(name + ", line " + line);
  }

  private static String words(int most, String what) {
    return String.format(Locale.ROOT, "at most %,d %s", most, what);
  }

  @Override
  public void close() throws IOException {
    bytes.close();
  }
}
