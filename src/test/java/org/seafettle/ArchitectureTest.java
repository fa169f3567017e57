package org.seafettle;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The shape of the program, each rule a sentence. */
class ArchitectureTest {

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.seafettle");

  private static final String ROOT = "org.seafettle.";

  private static final Set<String> PACKAGES =
      Set.of(
          "problem",
          "quantity",
          "survey",
          "formula",
          "catalogue",
          "trend",
          "assessment",
          "difference",
          "photo",
          "house",
          "json",
          "report",
          "yard",
          "html",
          "pdf",
          "calendar",
          "cli");

  /** The packages that judge, and so may look at nothing but what they are given. */
  private static final String[] JUDGING = {
    ROOT + "quantity..",
    ROOT + "survey..",
    ROOT + "formula..",
    ROOT + "catalogue..",
    ROOT + "trend..",
    ROOT + "assessment..",
    ROOT + "difference.."
  };

  private static String[] packages(String... names) {
    var patterns = new String[names.length];
    for (int i = 0; i < names.length; i++) {
      patterns[i] = ROOT + names[i] + "..";
    }
    return patterns;
  }

  private static String packageOf(JavaClass c) {
    var below = c.getPackageName().replaceFirst("^org\\.seafettle\\.?", "");
    return below.contains(".") ? below.substring(0, below.indexOf('.')) : below;
  }

  @Test
  void every_package_of_the_map_was_scanned_and_there_is_no_other() {
    var seen =
        PROGRAM.stream()
            .map(ArchitectureTest::packageOf)
            .filter(name -> !name.isEmpty())
            .collect(Collectors.toSet());
    assertThat(seen).isEqualTo(PACKAGES);
  }

  @Test
  void packages_depend_on_each_other_in_one_direction_only() {
    slices().matching("org.seafettle.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void a_problem_knows_nothing_of_the_rest() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + "problem..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            packages(
                "quantity",
                "survey",
                "formula",
                "catalogue",
                "trend",
                "assessment",
                "difference",
                "photo",
                "house",
                "json",
                "report",
                "yard",
                "html",
                "pdf",
                "calendar",
                "cli"))
        .check(PROGRAM);
  }

  @Test
  void what_judges_knows_no_library_of_the_edges() {
    noClasses()
        .that()
        .resideInAnyPackage(JUDGING)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "com.fasterxml..",
            "com.networknt..",
            "freemarker..",
            "org.apache.pdfbox..",
            "com.openhtmltopdf..",
            "org.apache.commons.imaging..",
            "picocli..",
            "org.slf4j..",
            "java.util.logging..",
            "org.apache.commons.logging..")
        .check(PROGRAM);
  }

  @Test
  void what_judges_touches_no_file() {
    noClasses()
        .that()
        .resideInAnyPackage(JUDGING)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.io..", "java.nio.file..")
        .check(
            PROGRAM.that(
                com.tngtech.archunit.base.DescribedPredicate.describe(
                    "are no exceptions, which Java makes serialisable",
                    c -> !c.isAssignableTo(Throwable.class))));
  }

  @Test
  void units_are_known_to_quantity_alone() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "quantity..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javax.measure..", "tech.units..", "systems.uom..")
        .check(PROGRAM);
  }

  @Test
  void json_and_yaml_are_known_to_json_alone() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "json..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.fasterxml..", "com.networknt..")
        .check(PROGRAM);
  }

  @Test
  void templates_are_known_to_html_alone() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "html..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("freemarker..")
        .check(PROGRAM);
  }

  @Test
  void html_and_pdf_do_not_know_each_other() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + "html..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(ROOT + "pdf..")
        .check(PROGRAM);
    noClasses()
        .that()
        .resideInAPackage(ROOT + "pdf..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            packages(
                "html", "report", "yard", "assessment", "catalogue", "survey", "json", "quantity"))
        .check(PROGRAM);
  }

  @Test
  void the_report_knows_neither_how_it_was_read_nor_how_it_is_printed() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + "report..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages("json", "html", "pdf", "calendar", "cli", "yard"))
        .check(PROGRAM);
  }

  @Test
  void the_yard_adds_up_what_it_is_given_and_touches_no_file() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + "yard..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages("json", "html", "pdf", "calendar", "cli"))
        .orShould()
        .dependOnClassesThat()
        .resideInAnyPackage("java.io..", "java.nio.file..")
        .check(PROGRAM);
  }

  @Test
  void nothing_depends_on_the_command_line() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "cli..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(ROOT + "cli..")
        .check(PROGRAM);
  }

  @Test
  void only_the_command_line_speaks_ends_the_program_or_looks_at_the_clock() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "cli..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(Instant.class, "now")
        .orShould()
        .callMethod(LocalDate.class, "now")
        .orShould()
        .callMethod(LocalDateTime.class, "now")
        .orShould()
        .callMethod(ZonedDateTime.class, "now")
        .orShould()
        .callMethod(Clock.class, "systemDefaultZone")
        .orShould()
        .callMethod(Clock.class, "systemUTC")
        .check(PROGRAM);
  }

  @Test
  void nothing_looks_at_the_language_or_the_time_zone_of_the_machine() {
    noClasses()
        .should()
        .callMethod(Locale.class, "getDefault")
        .orShould()
        .callMethod(ZoneId.class, "systemDefault")
        .orShould()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .orShould()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "formatted", Object[].class)
        .check(PROGRAM);
  }

  @Test
  void no_class_opens_a_network_connection() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.net.http..", "javax.net..", "java.rmi..")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.net.Socket")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.net.URLConnection")
        .orShould()
        .callMethod(java.net.URL.class, "openStream")
        .orShould()
        .callMethod(java.net.URL.class, "openConnection")
        .check(PROGRAM);
  }
}
