package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import java.text.Normalizer;
import java.util.Locale;

/**
 * Names that are safe in file names and as marks in files: small letters a to z, digits and single
 * hyphens, at most 60 of them.
 *
 * <pre>{@code
 * PlainName.of("Té, short <2>");  // => te-short-2
 * PlainName.of("../../etc/passwd");  // => etc-passwd
 * PlainName.of("\u5927");  // => unnamed
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class PlainName {
  private static final int LONGEST = 60;

  private PlainName() {}

  /**
   * Makes a name plain.
   *
   * @param name any text
   * @return never empty, never begins or ends with a hyphen
   */
  public static String of(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-");
    String shortened = plain.substring(0, Math.min(plain.length(), LONGEST));
    String bare = shortened.replaceAll("^-|-$", "");
    return bare.isEmpty() ? "unnamed" : bare;
  }
}
