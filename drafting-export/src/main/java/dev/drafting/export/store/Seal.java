package dev.drafting.export.store;

import java.io.ByteArrayOutputStream;
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
    int body = object.length - "\n}".length();
    byte[] seal = seal(object, body);
    byte[] sealed = Arrays.copyOf(object, body + seal.length);
    System.arraycopy(seal, 0, sealed, body, seal.length);
    return sealed;
  }

  /** Tells whether the file is as it was written. */
  static boolean isWhole(byte[] file) {
    byte[] plain = withoutReturns(file);
    int body = plain.length - START.length - DIGITS - END.length;
    return body > 0
        && Arrays.equals(seal(plain, body), Arrays.copyOfRange(plain, body, plain.length));
  }

  /** What follows the body. */
  private static byte[] seal(byte[] file, int body) {
    ByteArrayOutputStream seal = new ByteArrayOutputStream();
    seal.writeBytes(START);
    seal.writeBytes(digest(file, body).getBytes(StandardCharsets.UTF_8));
    seal.writeBytes(END);
    return seal.toByteArray();
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

  private static String digest(byte[] file, int body) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(file, 0, body);
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
