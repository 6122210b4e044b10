package dev.drafting.export.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * The last field of a stored file, the SHA-256 (FIPS 180-4) of everything before it. Carriage
 * returns do not count, so that a file whose line ends were changed on its way is still whole.
 */
final class Seal {
  static final String FIELD = "sha256";
  private static final byte[] START =
      (",\n  \"" + FIELD + "\" : \"").getBytes(StandardCharsets.UTF_8);
  private static final byte[] END = "\"\n}\n".getBytes(StandardCharsets.UTF_8);
  private static final int DIGITS = 64;

  private Seal() {}

  /** The bytes of an object with the seal as its last field. */
  static byte[] sealed(byte[] object) {
    byte[] body = Arrays.copyOf(object, object.length - "\n}".length());
    byte[] digits = digest(body).getBytes(StandardCharsets.UTF_8);
    byte[] sealed = Arrays.copyOf(body, body.length + START.length + digits.length + END.length);
    System.arraycopy(START, 0, sealed, body.length, START.length);
    System.arraycopy(digits, 0, sealed, body.length + START.length, digits.length);
    System.arraycopy(END, 0, sealed, sealed.length - END.length, END.length);
    return sealed;
  }

  /** Tells whether the file is as it was written. */
  static boolean isWhole(byte[] file) {
    byte[] plain = withoutReturns(file);
    int body = plain.length - START.length - DIGITS - END.length;
    return body > 0 && Arrays.equals(sealed(endedAt(plain, body)), plain);
  }

  private static byte[] endedAt(byte[] plain, int body) {
    return Arrays.copyOf(plain, body + "\n}".length());
  }

  private static byte[] withoutReturns(byte[] file) {
    byte[] plain = new byte[file.length];
    int size = 0;
    for (byte b : file) {
      if (b != '\r') {
        plain[size++] = b;
      }
    }
    return Arrays.copyOf(plain, size);
  }

  private static String digest(byte[] body) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(body));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
