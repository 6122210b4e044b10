package dev.drafting.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.core.domain.JavaClass;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every class that Java serialisation can store is stored as a record of its parts, and read
 * through its own checks. Records are read through their constructors, and what has no fields has
 * nothing to be wrong.
 */
class SerialFormsTest {
  private static final Map<Class<?>, Set<Object>> SAMPLES = SerialSamples.byClass();

  private static final int MOST = 60;

  /** Lengths that may well be below zero: to the other side, inwards, or before a start. */
  private static final Set<String> SIGNED =
      Set.of(
          "BodyRule.plus",
          "Fit.ease",
          "GradeRule.across",
          "GradeRule.along",
          "OffsetEdge.distance",
          "OffsetPart.from",
          "OffsetPart.to",
          "Seam.ease");

  static Stream<Class<?>> classes() {
    return Library.CLASSES.stream()
        .filter(type -> type.isAssignableTo(Serializable.class))
        .filter(type -> !type.isInterface() && !type.isEnum() && !type.isRecord())
        .filter(type -> !type.isAssignableTo(Throwable.class) && !type.isAssignableTo(Enum.class))
        .filter(type -> type.getPackageName().matches("dev\\.drafting\\.(core|knit|export)\\b.*"))
        .filter(SerialFormsTest::hasFields)
        .map(JavaClass::reflect)
        .sorted(Comparator.comparing(Class::getName));
  }

  private static boolean hasFields(JavaClass type) {
    return type.getAllFields().stream()
        .anyMatch(field -> !Modifier.isStatic(field.reflect().getModifiers()));
  }

  private static Record stored(Object value) throws ReflectiveOperationException {
    Method writing = value.getClass().getDeclaredMethod("writeReplace");
    writing.setAccessible(true);
    return (Record) writing.invoke(value);
  }

  private static byte[] written(Object value) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    return bytes.toByteArray();
  }

  private static Object read(byte[] bytes) throws IOException, ClassNotFoundException {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      return in.readObject();
    }
  }

  private static Set<Object> samples(Class<?> type) {
    return Objects.requireNonNull(SAMPLES.get(type), () -> "no sample of " + type);
  }

  private static Object sample(Class<?> type) {
    return samples(type).iterator().next();
  }

  @ParameterizedTest
  @MethodSource("classes")
  void itComesBackEqual(Class<?> type) throws Exception {
    for (Object value : samples(type).stream().limit(MOST).toList()) {
      Object again = read(written(value));
      assertEquals(value, again);
      assertEquals(value.toString(), again.toString());
    }
  }

  /** What was not written by the class itself is not read. */
  @ParameterizedTest
  @MethodSource("classes")
  void aStreamOfFieldsIsRefused(Class<?> type) throws Exception {
    Method reading = type.getDeclaredMethod("readObject", ObjectInputStream.class);
    reading.setAccessible(true);
    Class<?> factory = Class.forName("sun.reflect.ReflectionFactory");
    Object maker = factory.getMethod("getReflectionFactory").invoke(null);
    Object constructor =
        factory
            .getMethod("newConstructorForSerialization", Class.class, Constructor.class)
            .invoke(maker, type, Object.class.getDeclaredConstructor());
    Object empty = ((Constructor<?>) constructor).newInstance();
    InvocationTargetException refused =
        assertThrows(InvocationTargetException.class, () -> reading.invoke(empty, (Object) null));
    assertInstanceOf(InvalidObjectException.class, refused.getCause());
  }

  /** A number that is none, and nothing in the place of something; unless the part is not used. */
  @ParameterizedTest
  @MethodSource("classes")
  void aBrokenPartIsRefused(Class<?> type) throws Exception {
    Object value = sample(type);
    Record sound = stored(value);
    RecordComponent[] parts = sound.getClass().getRecordComponents();
    for (int i = 0; i < parts.length; i++) {
      for (Optional<Object> broken : broken(parts[i])) {
        byte[] bytes = written(with(sound, i, broken.orElse(null)));
        try {
          assertEquals(value, read(bytes), "read without its " + parts[i].getName());
        } catch (DraftingException | InvalidObjectException | NullPointerException e) {
          assertRefused(e, broken.isPresent());
        }
      }
    }
  }

  private static List<Optional<Object>> broken(RecordComponent part) {
    if (part.getType() == double.class || part.getType() == Double.class) {
      return List.of(Optional.of(Double.NaN), Optional.of(Double.POSITIVE_INFINITY));
    }
    boolean nullable = part.getAnnotatedType().isAnnotationPresent(Nullable.class);
    return part.getType().isPrimitive() || nullable ? List.of() : List.of(Optional.empty());
  }

  /** What the constructor of a record refuses is wrapped by the platform. */
  private static void assertRefused(Exception refusal, boolean inWords) {
    boolean wrapped = refusal instanceof InvalidObjectException;
    Throwable cause = wrapped ? refusal.getCause() : refusal;
    if (inWords || !(cause instanceof NullPointerException)) {
      assertInstanceOf(DraftingException.class, cause);
    }
  }

  private static Record with(Record sound, int changed, @Nullable Object broken)
      throws ReflectiveOperationException {
    RecordComponent[] parts = sound.getClass().getRecordComponents();
    Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class[]::new);
    @Nullable Object[] values = new Object[parts.length];
    for (int i = 0; i < parts.length; i++) {
      Method part = parts[i].getAccessor();
      part.setAccessible(true);
      values[i] = i == changed ? broken : part.invoke(sound);
    }
    Constructor<?> maker = sound.getClass().getDeclaredConstructor(types);
    maker.setAccessible(true);
    return (Record) maker.newInstance(values);
  }

  /** Unless it is one of those above, or the part is not used. */
  @Test
  void aSizeBelowZeroIsRefused() throws Exception {
    List<String> read = new ArrayList<>();
    for (Class<?> type : classes().toList()) {
      Object value = sample(type);
      Record sound = stored(value);
      RecordComponent[] parts = sound.getClass().getRecordComponents();
      for (int i = 0; i < parts.length; i++) {
        Optional<Object> below = below(parts[i].getType());
        if (below.isPresent() && isReadAsAnother(value, with(sound, i, below.get()))) {
          read.add(type.getSimpleName() + "." + parts[i].getName());
        }
      }
    }
    assertEquals(new TreeSet<>(SIGNED), new TreeSet<>(read));
  }

  private static Optional<Object> below(Class<?> type) {
    Optional<Object> length =
        type == Length.class ? Optional.of(Length.mm(-12_345)) : Optional.empty();
    return type == int.class ? Optional.of(-12_345) : length;
  }

  private static boolean isReadAsAnother(Object value, Record stored) throws Exception {
    byte[] bytes = written(stored);
    try {
      return !read(bytes).equals(value);
    } catch (DraftingException | InvalidObjectException e) {
      return false;
    }
  }
}
