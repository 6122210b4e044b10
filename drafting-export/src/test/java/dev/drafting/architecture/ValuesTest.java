package dev.drafting.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.Serializable;
import java.util.Collection;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Public classes of core and knit that hold data are values: final, serialisable, comparable. */
class ValuesTest {
  @Test
  void valuesAreFinalAndSerializable() {
    classes()
        .that(Library.VALUES)
        .should()
        .beAssignableTo(Serializable.class)
        .andShould()
        .haveModifier(JavaModifier.FINAL)
        .check(Library.CLASSES);
  }

  /** A volatile field that is not stored is a result kept once it is computed. */
  @Test
  void fieldsOfValuesAreFinalOrKeepAResult() {
    classes()
        .that(Library.VALUES)
        .should(haveOnlyFields("final", field -> has(field, JavaModifier.FINAL) || isKept(field)))
        .check(Library.CLASSES);
  }

  @Test
  void fieldsOfValuesCanBeSerialized() {
    classes()
        .that(Library.VALUES)
        .should(haveOnlyFields("serialisable", ValuesTest::canBeSerialized))
        .check(Library.CLASSES);
  }

  @Test
  void valuesCompareAndPrintThemselves() {
    classes().that(Library.VALUES).should(declareEqualsHashCodeToString()).check(Library.CLASSES);
  }

  private static ArchCondition<JavaClass> haveOnlyFields(String text, Predicate<JavaField> rule) {
    return new ArchCondition<>("have only " + text + " fields") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        type.getFields().stream()
            .filter(field -> !has(field, JavaModifier.STATIC))
            .filter(rule.negate())
            .map(field -> field.getFullName() + " is not " + text)
            .forEach(message -> events.add(SimpleConditionEvent.violated(type, message)));
      }
    };
  }

  private static ArchCondition<JavaClass> declareEqualsHashCodeToString() {
    return new ArchCondition<>("declare equals, hashCode and toString") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        Stream.of("equals", "hashCode", "toString")
            .filter(name -> type.getMethods().stream().noneMatch(m -> m.getName().equals(name)))
            .map(name -> type.getName() + " has no " + name + " of its own")
            .forEach(message -> events.add(SimpleConditionEvent.violated(type, message)));
      }
    };
  }

  private static boolean canBeSerialized(JavaField field) {
    JavaClass type = field.getRawType().getBaseComponentType();
    return has(field, JavaModifier.TRANSIENT)
        || type.isPrimitive()
        || type.isAssignableTo(Serializable.class)
        || type.isAssignableTo(Collection.class)
        || type.isAssignableTo(Map.class);
  }

  private static boolean isKept(JavaField field) {
    return has(field, JavaModifier.PRIVATE)
        && has(field, JavaModifier.TRANSIENT)
        && has(field, JavaModifier.VOLATILE);
  }

  private static boolean has(JavaField field, JavaModifier modifier) {
    return field.getModifiers().contains(modifier);
  }
}
