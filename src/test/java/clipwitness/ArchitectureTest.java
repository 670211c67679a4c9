package clipwitness;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Holds the package table of DEVELOPERS.md: which package may use which, and which keeps which library to itself. */
@AnalyzeClasses(packages = "clipwitness", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("quantity", List.of());
        MAY_USE.put("reason", List.of("quantity"));
        MAY_USE.put("capture", List.of("reason", "quantity"));
        MAY_USE.put("words", List.of("reason", "capture", "quantity"));
        MAY_USE.put("reading", List.of("capture", "reason", "quantity"));
        MAY_USE.put("job", List.of("capture", "quantity"));
        MAY_USE.put("signal", List.of("capture", "quantity"));
        MAY_USE.put("measure", List.of("signal", "capture", "reason", "quantity"));
        MAY_USE.put("compare", List.of("measure", "job", "capture", "reason", "quantity"));
        MAY_USE.put("figure", List.of("compare", "measure", "job", "words", "capture", "reason", "quantity"));
        MAY_USE.put("report", List.of("figure", "compare", "measure", "job", "words", "capture", "reason", "quantity"));
        MAY_USE.put(
                "batch",
                List.of(
                        "report",
                        "figure",
                        "compare",
                        "measure",
                        "signal",
                        "job",
                        "reading",
                        "capture",
                        "reason",
                        "quantity"));
        MAY_USE.put(
                "cli",
                List.of(
                        "batch",
                        "report",
                        "compare",
                        "measure",
                        "job",
                        "reading",
                        "words",
                        "capture",
                        "reason",
                        "quantity"));
    }

    private static final Map<String, List<String>> LIBRARY_STAYS_IN = new LinkedHashMap<>();

    static {
        LIBRARY_STAYS_IN.put("org.apache.commons.csv", List.of("reading", "job", "report"));
        LIBRARY_STAYS_IN.put("ch.randelshofer", List.of("reading"));
        LIBRARY_STAYS_IN.put("org.snakeyaml", List.of("job"));
        LIBRARY_STAYS_IN.put("org.apache.commons.math3", List.of("signal", "measure", "compare"));
        LIBRARY_STAYS_IN.put("org.jgrapht", List.of("measure"));
        LIBRARY_STAYS_IN.put("org.knowm", List.of("figure"));
        LIBRARY_STAYS_IN.put("com.openhtmltopdf", List.of("report"));
        LIBRARY_STAYS_IN.put("org.apache.pdfbox", List.of("report"));
        LIBRARY_STAYS_IN.put("org.apache.fontbox", List.of("report"));
        LIBRARY_STAYS_IN.put("de.rototor", List.of("report"));
        LIBRARY_STAYS_IN.put("io.pebbletemplates", List.of("report"));
        LIBRARY_STAYS_IN.put("com.fasterxml.jackson", List.of("report"));
        LIBRARY_STAYS_IN.put("picocli", List.of("cli"));
        LIBRARY_STAYS_IN.put("me.tongfei", List.of("cli"));
    }

    @ArchTest
    static void packagesUseOnlyWhatTheTableAllows(JavaClasses all) {
        LayeredArchitecture layers =
                layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (String name : MAY_USE.keySet()) {
            layers = layers.layer(name).definedBy("clipwitness." + name + "..");
        }
        for (Map.Entry<String, List<String>> row : MAY_USE.entrySet()) {
            layers = row.getValue().isEmpty()
                    ? layers.whereLayer(row.getKey()).mayNotAccessAnyLayer()
                    : layers.whereLayer(row.getKey())
                            .mayOnlyAccessLayers(row.getValue().toArray(String[]::new));
        }
        layers.check(all);
    }

    @ArchTest
    static void librariesStayInTheirPackages(JavaClasses all) {
        LIBRARY_STAYS_IN.forEach((library, packages) -> noClasses()
                .that()
                .resideOutsideOfPackages(
                        packages.stream().map(p -> "clipwitness." + p + "..").toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library + "..")
                .allowEmptyShould(true)
                .check(all));
    }

    @ArchTest
    static void nothingReadsTheClock(JavaClasses all) {
        noClasses().should().callMethod(Instant.class, "now").check(all);
        noClasses().should().dependOnClassesThat().areAssignableTo(Clock.class).check(all);
        noClasses().should().callMethod(System.class, "currentTimeMillis").check(all);
    }

    @ArchTest
    static void onlyMainExits(JavaClasses all) {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("clipwitness.cli.Main")
                .should()
                .callMethod(System.class, "exit", int.class)
                .check(all);
    }

    @ArchTest
    static void packagesHaveTheirOwnWord(JavaClasses all) {
        classes()
                .that()
                .resideInAPackage("clipwitness..")
                .should()
                .resideInAnyPackage(MAY_USE.keySet().stream()
                        .map(p -> "clipwitness." + p + "..")
                        .toArray(String[]::new))
                .check(all);
    }
}
