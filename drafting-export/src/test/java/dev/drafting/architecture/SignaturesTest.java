package dev.drafting.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What users of the library can see: own types, no foreign ones, nothing that can be changed. */
class SignaturesTest {
  private static final String BRIDGE = "dev.drafting.core.geometry.JtsBridge";

  @Test
  void signaturesShowNoForeignTypes() {
    classes()
        .that()
        .arePublic()
        .and()
        .doNotHaveFullyQualifiedName(BRIDGE)
        .should(showNoForeignTypes())
        .check(Library.CLASSES);
  }

  @Test
  void publicFieldsAreConstants() {
    fields().that().arePublic().should().beStatic().andShould().beFinal().check(Library.CLASSES);
  }

  @Test
  void everyPackageIsNullMarkedAndWatchesItsResults() {
    Set<String> bare = new TreeSet<>();
    for (JavaClass type : Library.CLASSES) {
      if (!isMarked(type.getPackage())) {
        bare.add(type.getPackageName());
      }
    }
    assertEquals(Set.of(), bare, "packages without package-info, @NullMarked or @CheckReturnValue");
  }

  private static boolean isMarked(JavaPackage holder) {
    Set<String> marks =
        holder.getAnnotations().stream()
            .map(JavaAnnotation::getRawType)
            .map(JavaClass::getSimpleName)
            .collect(Collectors.toSet());
    boolean root = holder.getName().equals("dev.drafting.core");
    return marks.contains("NullMarked") && (root || marks.contains("CheckReturnValue"));
  }

  private static ArchCondition<JavaClass> showNoForeignTypes() {
    return new ArchCondition<>("show no foreign types in signatures") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        Stream<JavaType> parents =
            Stream.concat(type.getSuperclass().stream(), type.getInterfaces().stream());
        Stream<JavaType> members =
            type.getMembers().stream()
                .filter(SignaturesTest::isVisible)
                .flatMap(SignaturesTest::typesOf);
        Stream.concat(parents, members)
            .flatMap(shown -> shown.getAllInvolvedRawTypes().stream())
            .map(JavaClass::getBaseComponentType)
            .filter(SignaturesTest::isForeign)
            .map(foreign -> type.getName() + " shows " + foreign.getName())
            .distinct()
            .forEach(text -> events.add(SimpleConditionEvent.violated(type, text)));
      }
    };
  }

  private static boolean isVisible(JavaMember member) {
    return member.getModifiers().contains(JavaModifier.PUBLIC)
        || member.getModifiers().contains(JavaModifier.PROTECTED);
  }

  private static Stream<JavaType> typesOf(JavaMember member) {
    if (member instanceof JavaField field) {
      return Stream.of(field.getType());
    }
    JavaCodeUnit unit = (JavaCodeUnit) member;
    Stream<JavaType> thrown = unit.getExceptionTypes().stream().map(type -> (JavaType) type);
    return Stream.of(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream(), thrown)
        .flatMap(types -> types);
  }

  /** What is neither the library's own nor the Java platform's; its XML writers are javax.xml. */
  private static boolean isForeign(JavaClass type) {
    return !type.isPrimitive()
        && !type.getPackageName().startsWith("java.")
        && !type.getPackageName().startsWith("javax.xml.")
        && !type.getPackageName().startsWith("dev.drafting.");
  }
}
