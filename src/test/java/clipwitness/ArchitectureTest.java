package clipwitness;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Holds the package table of DEVELOPERS.md: which package may use which. The tables are read from there, so the two cannot differ. A package that
 * no row names is closed to all others.
 */
@AnalyzeClasses(packages = "clipwitness", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String ROOT = "clipwitness.";
    private static final int MOST_FILES = 31; // thirty and the file that says what the package is for
    private static final Map<String, Set<String>> MAY_USE = table("package", 3);
    private static final Map<String, Set<String>> LIBRARY_STAYS_IN = table("library", 2);

    @ArchTest
    static void packagesUseOnlyWhatTheTableAllows(JavaClasses all) {
        Map<String, Set<String>> used = used(all);
        assertThat(used.keySet()).as("packages").isEqualTo(MAY_USE.keySet());
        used.forEach((name, others) ->
                assertThat(MAY_USE.get(name)).as("what %s may use", name).containsAll(others));
    }

    @ArchTest
    static void noPackagesUseEachOtherInACircle(JavaClasses all) {
        slices().matching("clipwitness.(**)").should().beFreeOfCycles().check(all);
    }

    @ArchTest
    static void librariesStayInTheirPackages(JavaClasses all) {
        LIBRARY_STAYS_IN.forEach((library, packages) -> noClasses()
                .that()
                .resideOutsideOfPackages(packages.stream().map(p -> ROOT + p).toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library + "..")
                .allowEmptyShould(true)
                .check(all));
    }

    /** So that a decision cannot hang on a sentence: what reads, measures and decides sees codes only. */
    @ArchTest
    static void whatDecidesCannotReachTheWords(JavaClasses all) {
        noClasses()
                .that()
                .resideInAnyPackage(
                        Stream.of("reason", "capture", "reading", "job", "signal", "measure", "compare", "batch")
                                .map(p -> ROOT + p + "..")
                                .toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(ROOT + "words..")
                .check(all);
    }

    @ArchTest
    static void noTwoTypesShareAName(JavaClasses all) {
        assertThat(all.stream()
                        .filter(JavaClass::isTopLevelClass)
                        .map(JavaClass::getSimpleName)
                        .filter(n -> !"package-info".equals(n)))
                .doesNotHaveDuplicates();
    }

    @ArchTest
    static void nothingReadsTheClock(JavaClasses all) {
        noClasses().should().callMethod(Instant.class, "now").check(all);
        noClasses().should().dependOnClassesThat().areAssignableTo(Clock.class).check(all);
        noClasses().should().callMethod(System.class, "currentTimeMillis").check(all);
    }

    @ArchTest
    static void nothingSetsASystemPropertyOrMakesATemporaryFile(JavaClasses all) {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("clipwitness.cli.Main") // the program itself runs without a display
                .should()
                .callMethod(System.class, "setProperty", String.class, String.class)
                .check(all);
        noClasses()
                .should()
                .callMethodWhere(target(nameMatching("create(Temp|TempFile|TempDirectory)")))
                .check(all);
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
    static void everyPackageHasFewFilesAndSaysWhatItIsFor(JavaClasses all) throws IOException {
        for (String name : used(all).keySet()) {
            Path folder = Path.of("src/main/java/clipwitness", name.split("\\."));
            assertThat(folder.resolve("package-info.java")).exists();
            try (Stream<Path> files = Files.list(folder)) {
                assertThat(files.filter(f -> f.toString().endsWith(".java")).count())
                        .as("files of %s", name)
                        .isLessThanOrEqualTo(MOST_FILES);
            }
        }
    }

    private static Map<String, Set<String>> used(JavaClasses all) {
        Map<String, Set<String>> used = new LinkedHashMap<>();
        for (JavaClass from : all) {
            Set<String> others = used.computeIfAbsent(room(from), k -> new TreeSet<>());
            from.getDirectDependenciesFromSelf().stream()
                    .map(Dependency::getTargetClass)
                    .filter(to -> to.getPackageName().startsWith(ROOT))
                    .map(ArchitectureTest::room)
                    .filter(to -> !to.equals(room(from)))
                    .forEach(others::add);
        }
        return used;
    }

    private static String room(JavaClass type) {
        return type.getPackageName().substring(ROOT.length());
    }

    /**
     * A table of DEVELOPERS.md.
     *
     * @param head   head of its first column
     * @param column which column holds the names of packages
     */
    private static Map<String, Set<String>> table(String head, int column) {
        try {
            return Files.readAllLines(Path.of("DEVELOPERS.md")).stream()
                    .dropWhile(l -> !l.startsWith("| " + head + " |"))
                    .skip(2)
                    .takeWhile(l -> l.startsWith("|"))
                    .map(l -> l.split("\\s*\\|\\s*"))
                    .collect(Collectors.toMap(c -> c[1].replace("`", ""), c -> names(c[column])));
        } catch (IOException e) {
            throw new IllegalStateException("DEVELOPERS.md cannot be read", e);
        }
    }

    private static Set<String> names(String cell) {
        return "–".equals(cell) ? Set.of() : Set.of(cell.split(",\\s*"));
    }
}
