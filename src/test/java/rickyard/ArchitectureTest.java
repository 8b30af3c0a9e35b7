package rickyard;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The shape of the house: which room may know which, and which room may know which library. */
@AnalyzeClasses(packages = "rickyard", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule arrowsPointDownwards =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("cli")
          .definedBy("rickyard.cli..")
          .layer("morning")
          .definedBy("rickyard.morning..")
          .layer("report")
          .definedBy("rickyard.report..")
          .layer("post")
          .definedBy("rickyard.post..")
          .layer("ledger")
          .definedBy("rickyard.ledger..")
          .layer("registers")
          .definedBy("rickyard.registers..")
          .layer("tables")
          .definedBy("rickyard.tables..")
          .layer("intake")
          .definedBy("rickyard.intake..")
          .layer("core.advice")
          .definedBy("rickyard.core.advice..")
          .layer("core.remedy")
          .definedBy("rickyard.core.remedy..")
          .layer("core.nutrition")
          .definedBy("rickyard.core.nutrition..")
          .layer("core.season")
          .definedBy("rickyard.core.season..")
          .layer("core.judgement")
          .definedBy("rickyard.core.judgement..")
          .layer("core.forage")
          .definedBy("rickyard.core.forage..")
          .layer("core.quantity")
          .definedBy("rickyard.core.quantity..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("morning")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("cli", "morning")
          .whereLayer("post")
          .mayOnlyBeAccessedByLayers("cli", "morning")
          .whereLayer("ledger")
          .mayOnlyBeAccessedByLayers("cli", "morning", "report", "post")
          .whereLayer("registers")
          .mayOnlyBeAccessedByLayers("cli", "morning", "report", "ledger")
          .whereLayer("tables")
          .mayOnlyBeAccessedByLayers("cli", "morning", "report", "post", "ledger", "registers")
          .whereLayer("intake")
          .mayOnlyBeAccessedByLayers("cli", "morning", "report", "ledger", "registers", "tables")
          .whereLayer("core.advice")
          .mayOnlyBeAccessedByLayers(
              "cli", "morning", "report", "ledger", "registers", "tables", "intake")
          .whereLayer("core.remedy")
          .mayOnlyBeAccessedByLayers(
              "cli", "morning", "report", "ledger", "registers", "tables", "intake", "core.advice")
          .whereLayer("core.season")
          .mayOnlyBeAccessedByLayers("cli", "morning", "report", "ledger", "registers", "tables")
          .because("rooms are read from the bottom up");

  @ArchTest
  static final ArchRule nutritionKnowsNoJudgementAndNoRemedy =
      noClasses()
          .that()
          .resideInAPackage("rickyard.core.forage..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "rickyard.core.judgement..", "rickyard.core.nutrition..", "rickyard.core.remedy..")
          .because("core.forage stands below judgement, nutrition and remedy");

  @ArchTest
  static final ArchRule quantityIsALeaf =
      classes()
          .that()
          .resideInAPackage("rickyard.core.quantity..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("rickyard.core.quantity..", "java..", "org.jspecify..")
          .because("units and uncertainty rest on nothing");

  @ArchTest
  static final ArchRule coreKnowsOnlyTheJdk =
      classes()
          .that()
          .resideInAPackage("rickyard.core..")
          .and()
          .resideOutsideOfPackage("rickyard.core.remedy..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("rickyard.core..", "java..", "org.jspecify..")
          .because("a formula must be checkable against its source with nothing but a JVM");

  @ArchTest
  static final ArchRule remedyKnowsTheOptimiserBesides =
      classes()
          .that()
          .resideInAPackage("rickyard.core.remedy..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "rickyard.core..", "java..", "org.jspecify..", "org.ojalgo..", "org.jgrapht..")
          .because("optimisers are the core's only libraries");

  @ArchTest
  static final ArchRule coreDoesNoInputOutputAndReadsNoClock =
      noClasses()
          .that()
          .resideInAPackage("rickyard.core..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..", "java.util.logging..")
          .orShould()
          .callMethod(java.time.LocalDate.class, "now")
          .orShould()
          .callMethod(java.util.Locale.class, "getDefault")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .because("the core is a function of its arguments");

  @ArchTest
  static final ArchRule documentsAreParsedInIntake =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "rickyard.intake..", "rickyard.report.pdf..", "rickyard.report.book..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.apache.tika..", "org.apache.pdfbox..", "org.apache.poi..", "org.dhatim..")
          .because(
              "bytes become cells behind one seam; report.pdf and report.book write with the same"
                  + " libraries");

  @ArchTest
  static final ArchRule calendarsStayInReportCalendar =
      noClasses()
          .that()
          .resideOutsideOfPackage("rickyard.report.calendar..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("biweekly..")
          .because("it knows the zone of the machine, which no output may");

  @ArchTest
  static final ArchRule printingStaysInReportPdf =
      noClasses()
          .that()
          .resideOutsideOfPackage("rickyard.report.pdf..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.openhtmltopdf..")
          .because("fixed identity, fonts and no fetching are seen to in one place");

  @ArchTest
  static final ArchRule mailStaysInTwoRooms =
      noClasses()
          .that()
          .resideOutsideOfPackages("rickyard.report.letter..", "rickyard.post..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("jakarta.mail..", "jakarta.activation..", "org.eclipse.angus..")
          .because("drafts are made in one place and sent in one other");

  @ArchTest
  static final ArchRule jdbcStaysInTheLedger =
      noClasses()
          .that()
          .resideOutsideOfPackage("rickyard.ledger..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.sql..",
              "org.h2..",
              "org.postgresql..",
              "com.zaxxer..",
              "org.flywaydb..",
              "org.springframework.jdbc..")
          .because("one room knows how memory is kept");

  @ArchTest
  static final ArchRule springStaysInMorningAndCli =
      noClasses()
          .that()
          .resideOutsideOfPackages("rickyard.morning..", "rickyard.cli..", "rickyard.ledger..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.springframework..")
          .because("everything else must run without a container");

  @ArchTest
  static final ArchRule channelsStayInMorningRemote =
      noClasses()
          .that()
          .resideOutsideOfPackage("rickyard.morning.remote..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.springframework.integration..",
              "org.springframework.messaging..",
              "org.springframework.batch.integration..")
          .because("who asks for no workers loads none of it");

  @ArchTest
  static final ArchRule remoteKnowsNoDocument =
      noClasses()
          .that()
          .resideInAPackage("rickyard.morning.remote..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("rickyard.morning", "rickyard.intake..", "rickyard.core..")
          .because("a part is the caller's step");

  @ArchTest
  static final ArchRule pagesStayInReport =
      noClasses()
          .that()
          .resideOutsideOfPackage("rickyard.report..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tech.tablesaw..", "org.thymeleaf..")
          .because("rounding and wording happen in one room");

  @ArchTest
  static final ArchRule seasonKnowsForageOnly =
      classes()
          .that()
          .resideInAPackage("rickyard.core.season..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "rickyard.core.season..",
              "rickyard.core.forage..",
              "rickyard.core.quantity..",
              "java..",
              "org.jspecify..")
          .because("tests beside each other decide no verdict and no diet");

  @ArchTest
  static final ArchRule countingStaysInTheSeason =
      noClasses()
          .that()
          .resideOutsideOfPackage("rickyard.report.season..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tech.tablesaw..")
          .because("an empty morning loads none of it, and nothing is decided by it");

  @ArchTest
  static final ArchRule columnsAreFilledFromTypedValues =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tech.tablesaw.io..")
          .because("it guesses what a figure from outside means");

  @ArchTest
  static final ArchRule noCycles =
      slices()
          .matching("rickyard.(*)..")
          .should()
          .beFreeOfCycles()
          .because("rooms are read one at a time, leaves first");

  @ArchTest
  static final ArchRule noCyclesInTheCore =
      slices()
          .matching("rickyard.core.(*)..")
          .should()
          .beFreeOfCycles()
          .because("the core is read from quantity upwards");
}
