package dev.drafting.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
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
