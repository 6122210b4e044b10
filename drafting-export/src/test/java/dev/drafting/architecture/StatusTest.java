package dev.drafting.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every public type says whether it is kept or may still change. */
class StatusTest {
  @Test
  void publicTypesAreEitherStableOrExperimental() {
    classes()
        .that()
        .arePublic()
        .and()
        .areTopLevelClasses()
        .and()
        .doNotHaveFullyQualifiedName(Stable.class.getName())
        .and()
        .doNotHaveFullyQualifiedName(Experimental.class.getName())
        .and()
        .doNotHaveSimpleName("package-info")
        .should(sayOneOfBoth())
        .check(Library.CLASSES);
  }

  /** A stable type may offer what is not settled, if it says so at the method. */
  @Test
  void stableTypesMentionOnlyStableOnes() {
    methods()
        .that()
        .arePublic()
        .and()
        .areDeclaredInClassesThat()
        .areAnnotatedWith(Stable.class)
        .and()
        .areNotAnnotatedWith(Experimental.class)
        .should(mentionOnlyStableTypes())
        .check(Library.CLASSES);
  }

  private static ArchCondition<JavaMethod> mentionOnlyStableTypes() {
    return new ArchCondition<>("mention only stable types") {
      @Override
      public void check(JavaMethod method, ConditionEvents events) {
        Stream.concat(Stream.of(method.getReturnType()), method.getParameterTypes().stream())
            .flatMap(type -> type.getAllInvolvedRawTypes().stream())
            .filter(type -> type.isAnnotatedWith(Experimental.class))
            .map(type -> method.getFullName() + " mentions " + type.getSimpleName())
            .forEach(message -> events.add(SimpleConditionEvent.violated(method, message)));
      }
    };
  }

  private static ArchCondition<JavaClass> sayOneOfBoth() {
    return new ArchCondition<>("say that they are stable or experimental") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        if (type.isAnnotatedWith(Stable.class) == type.isAnnotatedWith(Experimental.class)) {
          String message = type.getName() + " is not marked, or marked as both";
          events.add(SimpleConditionEvent.violated(type, message));
        }
      }
    };
  }
}
