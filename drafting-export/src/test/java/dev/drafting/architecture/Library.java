package dev.drafting.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The classes of the three library modules, without their tests. */
final class Library {
  static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dev.drafting");

  /**
   * Classes of core and knit that users hold in their hands: public, with data and with something
   * to ask them; not an interface, not an exception.
   */
  static final DescribedPredicate<JavaClass> VALUES =
      DescribedPredicate.describe(
          "values",
          type ->
              !type.getPackageName().startsWith("dev.drafting.export")
                  && type.getModifiers().contains(JavaModifier.PUBLIC)
                  && !type.isInterface()
                  && !type.isEnum()
                  && !type.isAssignableTo(Throwable.class)
                  && type.getFields().stream().anyMatch(field -> !isStatic(field))
                  && type.getMethods().stream().anyMatch(Library::isAsked));

  private Library() {}

  private static boolean isStatic(JavaMember member) {
    return member.getModifiers().contains(JavaModifier.STATIC);
  }

  private static boolean isAsked(JavaMethod method) {
    return !isStatic(method) && method.getModifiers().contains(JavaModifier.PUBLIC);
  }
}
