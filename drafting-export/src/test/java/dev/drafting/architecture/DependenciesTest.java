package dev.drafting.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Dependencies run one way: export, knit, core, and inside core as listed here. */
class DependenciesTest {
  private static final String CORE = "dev.drafting.core";

  /** What each package of core may know of the others. */
  private static final Map<String, List<String>> CORE_PACKAGES =
      Map.ofEntries(
          Map.entry("finding", List.of()),
          Map.entry("measure", List.of("finding")),
          Map.entry("geometry", List.of("finding", "measure")),
          Map.entry("offset", List.of("finding", "measure", "geometry")),
          Map.entry("pattern", List.of("finding", "measure", "geometry", "offset")),
          Map.entry("assembly", List.of("finding", "measure", "geometry", "offset", "pattern")),
          Map.entry(
              "cut", List.of("finding", "measure", "geometry", "offset", "pattern", "assembly")),
          Map.entry("trace", List.of("finding", "measure", "geometry", "offset", "pattern")),
          Map.entry("alter", List.of("finding", "measure", "geometry", "offset", "pattern")),
          Map.entry("grade", List.of("finding", "measure", "geometry", "pattern")),
          Map.entry("lay", List.of("finding", "measure", "geometry", "offset", "pattern", "cut")),
          Map.entry(
              "template",
              List.of("finding", "measure", "geometry", "offset", "pattern", "assembly")));

  @Test
  void noCircleRunsBetweenPackages() {
    slices().matching("dev.drafting.(**)").should().beFreeOfCycles().check(Library.CLASSES);
  }

  @Test
  void coreKnowsNothingOfKnitsAndFiles() {
    noClasses()
        .that()
        .resideInAPackage(CORE + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("dev.drafting.knit..", "dev.drafting.export..", "java.nio.file..")
        .check(Library.CLASSES);
  }

  @Test
  void knitKnowsNothingOfExports() {
    noClasses()
        .that()
        .resideInAPackage("dev.drafting.knit..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("dev.drafting.export..", "java.nio.file..")
        .check(Library.CLASSES);
  }

  @Test
  void packagesOfCoreKnowOnlyThoseBelowThem() {
    CORE_PACKAGES.forEach(DependenciesTest::checkCorePackage);
  }

  private static void checkCorePackage(String name, List<String> below) {
    List<String> allowed = new ArrayList<>(List.of(CORE, CORE + "." + name + ".."));
    below.forEach(other -> allowed.add(CORE + "." + other + ".."));
    noClasses()
        .that()
        .resideInAPackage(CORE + "." + name + "..")
        .should()
        .dependOnClassesThat(
            resideInAPackage("dev.drafting..")
                .and(not(resideInAnyPackage(allowed.toArray(String[]::new)))))
        .check(Library.CLASSES);
  }

  @Test
  void everyPackageOfCoreHasItsPlace() {
    classes()
        .that()
        .resideInAPackage(CORE + ".*..")
        .should()
        .resideInAnyPackage(
            CORE_PACKAGES.keySet().stream()
                .map(name -> CORE + "." + name + "..")
                .toArray(String[]::new))
        .check(Library.CLASSES);
  }

  @Test
  void servicesOfKnitNeverNeedADraft() {
    noClasses()
        .that()
        .resideInAPackage("dev.drafting.knit.*..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("dev.drafting.knit")
        .check(Library.CLASSES);
  }
}
