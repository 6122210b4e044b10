package dev.drafting.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Same input, same bytes: the library reads no clock, no default locale, no unseeded chance. */
class DeterminismTest {
  private static final Set<String> CLOCKS =
      Set.of(
          "java.lang.System.currentTimeMillis",
          "java.lang.System.nanoTime",
          "java.util.Calendar.getInstance",
          "java.util.TimeZone.getDefault",
          "java.time.ZoneId.systemDefault");
  private static final Set<String> CHANCE =
      Set.of(
          "java.lang.Math.random",
          "java.lang.System.identityHashCode",
          "java.util.UUID.randomUUID",
          "java.util.concurrent.ThreadLocalRandom.current",
          "java.util.Collections.shuffle");
  private static final Set<String> LOCALES =
      Set.of(
          "java.lang.String.formatted",
          "java.nio.charset.Charset.defaultCharset",
          "java.util.Locale.getDefault");

  /** Methods and constructors that take a Locale and fall back on the default one without it. */
  private static final Set<String> TAKE_A_LOCALE =
      Set.of(
          "java.lang.String.format",
          "java.lang.String.toLowerCase",
          "java.lang.String.toUpperCase",
          "java.io.PrintStream.printf",
          "java.io.PrintWriter.printf",
          "java.text.NumberFormat.getInstance",
          "java.text.NumberFormat.getNumberInstance",
          "java.text.NumberFormat.getIntegerInstance",
          "java.text.NumberFormat.getPercentInstance",
          "java.text.DecimalFormatSymbols.getInstance",
          "java.text.Collator.getInstance",
          "java.time.format.DateTimeFormatter.ofPattern",
          "java.text.DecimalFormatSymbols.<init>",
          "java.text.MessageFormat.<init>",
          "java.util.Formatter.<init>");

  @Test
  void noStandardStreamsAndNoLogging() {
    NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(Library.CLASSES);
    NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING.check(Library.CLASSES);
  }

  /** Only where a caller asks for a search of some time. */
  @Test
  void noClock() {
    forbid(
        "read the clock",
        call ->
            !call.getOriginOwner().getName().equals("dev.drafting.core.lay.TimeBudget")
                && (CLOCKS.contains(name(call)) || isNow(call) || isNewDate(call)));
  }

  @Test
  void noChanceWithoutASeed() {
    forbid("draw unseeded numbers", call -> CHANCE.contains(name(call)) || isUnseeded(call));
  }

  @Test
  void noDefaultLocaleOrCharset() {
    forbid("use the default locale", call -> LOCALES.contains(name(call)) || lacksLocale(call));
  }

  private static void forbid(String what, Predicate<JavaCall<?>> found) {
    DescribedPredicate<JavaCall<?>> calls = describe(what, found);
    noClasses().should().callCodeUnitWhere(calls).check(Library.CLASSES);
  }

  private static String name(JavaCall<?> call) {
    CodeUnitCallTarget target = call.getTarget();
    return target.getOwner().getName() + "." + target.getName();
  }

  private static List<String> parameters(JavaCall<?> call) {
    return call.getTarget().getRawParameterTypes().stream().map(JavaClass::getName).toList();
  }

  private static boolean isNow(JavaCall<?> call) {
    String name = name(call);
    return name.startsWith("java.time.") && (name.endsWith(".now") || name.contains(".Clock.s"));
  }

  private static boolean isNewDate(JavaCall<?> call) {
    return name(call).equals("java.util.Date.<init>") && parameters(call).isEmpty();
  }

  private static boolean isUnseeded(JavaCall<?> call) {
    String name = name(call);
    return (name.equals("java.util.Random.<init>")
            || name.equals("java.util.SplittableRandom.<init>"))
        && parameters(call).isEmpty();
  }

  private static boolean lacksLocale(JavaCall<?> call) {
    boolean plainPattern =
        name(call).equals("java.text.DecimalFormat.<init>") && parameters(call).size() < 2;
    return plainPattern
        || (TAKE_A_LOCALE.contains(name(call)) && !parameters(call).contains("java.util.Locale"));
  }
}
