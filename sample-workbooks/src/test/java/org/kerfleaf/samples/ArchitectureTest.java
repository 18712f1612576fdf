package org.kerfleaf.samples;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the arrows of the house: which module and which package may know which. */
class ArchitectureTest {
    private static final String CORE_PACKAGES =
            "measure reason stock shape rain sketch cutting saw joint finish site schedule cost rules caution words plan workbook";

    private static JavaClasses house;

    @BeforeAll
    static void read() {
        house = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.kerfleaf");
    }

    private static String[] core() {
        return Arrays.stream(CORE_PACKAGES.split(" "))
                .map(name -> "org.kerfleaf." + name + "..")
                .toArray(String[]::new);
    }

    @Test
    void scan_findsTheHouse() {
        // An empty scan would let every rule below pass.
        assertThat(house.size()).isGreaterThan(300);
        Set<String> packages = house.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
        for (String name : CORE_PACKAGES.split(" ")) {
            assertThat(packages).contains("org.kerfleaf." + name);
        }
        assertThat(packages)
                .contains("org.kerfleaf.kernel", "org.kerfleaf.export.booklet", "org.kerfleaf.export.command");
    }

    @Test
    void core_knowsNoOtherModule() {
        noClasses()
                .that()
                .resideInAnyPackage(core())
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.kerfleaf.kernel..", "org.kerfleaf.export..")
                .check(house);
    }

    @Test
    void core_knowsNoPaperNoScreenNoWeb() {
        noClasses()
                .that()
                .resideInAnyPackage(core())
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.apache.poi..",
                        "com.lowagie..",
                        "java.awt..",
                        "javax.swing..",
                        "com.sun.net.httpserver..",
                        "java.net.http..")
                .check(house);
    }

    @Test
    void kernel_knowsNoPaper() {
        noClasses()
                .that()
                .resideInAPackage("org.kerfleaf.kernel..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.kerfleaf.export..", "org.apache.poi..", "com.lowagie..", "java.awt..")
                .check(house);
    }

    @Test
    void export_readsPlansNotCells() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "org.kerfleaf.export.drawing..",
                        "org.kerfleaf.export.chart..",
                        "org.kerfleaf.export.spreadsheet..",
                        "org.kerfleaf.export.booklet..",
                        "org.kerfleaf.export.planform..",
                        "org.kerfleaf.export.terminal..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.kerfleaf.kernel..",
                        "org.kerfleaf.export.command..",
                        "org.kerfleaf.export.page..",
                        "org.kerfleaf.words..")
                .check(house);
    }

    @Test
    void core_lowerPackagesKnowNoHigherOnes() {
        // From the lowest up; each may know only those before it.
        String[] order = {"measure", "reason", "stock", "shape", "sketch"};
        for (int i = 0; i < order.length; i++) {
            String[] higher = Arrays.stream(order, i + 1, order.length)
                    .map(name -> "org.kerfleaf." + name + "..")
                    .toArray(String[]::new);
            if (higher.length > 0) {
                noClasses()
                        .that()
                        .resideInAPackage("org.kerfleaf." + order[i] + "..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(higher)
                        .check(house);
            }
        }
        noClasses()
                .that()
                .resideInAnyPackage(
                        "org.kerfleaf.measure..",
                        "org.kerfleaf.reason..",
                        "org.kerfleaf.stock..",
                        "org.kerfleaf.shape..",
                        "org.kerfleaf.sketch..",
                        "org.kerfleaf.cutting..",
                        "org.kerfleaf.saw..",
                        "org.kerfleaf.joint..",
                        "org.kerfleaf.finish..",
                        "org.kerfleaf.site..",
                        "org.kerfleaf.schedule..",
                        "org.kerfleaf.cost..",
                        "org.kerfleaf.rules..",
                        "org.kerfleaf.caution..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.kerfleaf.words..", "org.kerfleaf.plan..", "org.kerfleaf.workbook..")
                .check(house);
    }

    @Test
    void packages_haveNoRings() {
        SlicesRuleDefinition.slices()
                .matching("org.kerfleaf.(*)..")
                .should()
                .beFreeOfCycles()
                .check(house);
        SlicesRuleDefinition.slices()
                .matching("org.kerfleaf.export.(*)..")
                .should()
                .beFreeOfCycles()
                .check(house);
    }

    @Test
    void planning_asksNoClockAndNoChance() {
        noClasses()
                .that()
                .resideInAnyPackage(core())
                .should()
                .callMethod(LocalDate.class, "now")
                .orShould()
                .callMethod(Instant.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .check(house);
    }

    @Test
    void output_goesThroughTheCommandOnly() {
        noClasses()
                .that()
                .resideInAnyPackage(core())
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
                .check(house);
    }

    @Test
    void packages_sayWhatTheyAre() throws IOException {
        List<Path> silent = new ArrayList<>();
        for (String module : List.of("workbook-core", "kernel", "export")) {
            try (Stream<Path> tree = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                tree.filter(path -> path.toString().endsWith(".java"))
                        .map(Path::getParent)
                        .distinct()
                        .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                        .forEach(silent::add);
            }
        }
        assertThat(silent).isEmpty();
    }
}
