package clipwitness;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import clipwitness.fixture.FolderCopy;
import clipwitness.fixture.Installed;
import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.job.read.JobReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What README.md and DEVELOPERS.md say about commands, files and packages is so. */
class ReadmeTest {
    private static final Pattern SHELL_BLOCK = Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL);
    private static final Pattern PATH =
            Pattern.compile("(?<![\\w./-])[\\w.-]+(/[\\w.-]+)+|\\]\\(([^)#]+)\\)|`(\\.?[\\w-]+\\.\\w+)`");
    /** Paths that the user has, or that the program or the build makes; names of standards are no paths. */
    private static final Pattern MADE_OR_THE_USERS = Pattern.compile(
            "(target|report|captures|bin)/.*|manual\\.html|clipwitness-VERSION.*\\.zip|-VERSION(-image)?\\.zip|job\\.yaml|captures\\.csv|summary\\.(html|csv)|N(-results|-fault)?\\.\\w+|PDF/U?A(-\\w+)?");

    /** Folders that a file of the program may be named from. */
    private static final List<String> SOURCES = List.of("src/main/java/clipwitness", "src/test/java/clipwitness");

    private static final String FIXTURES = "src/test/resources/clipwitness";

    private static String read(String file) throws IOException {
        return Files.readString(Path.of(file));
    }

    private static List<String> shellBlocks(String file) throws IOException {
        return SHELL_BLOCK
                .matcher(read(file))
                .results()
                .map(match -> match.group(1).strip())
                .toList();
    }

    @Test
    void theReadmesTestCommandIsTheOneThatRunsBeforeAChangeGoesIn() throws IOException {
        List<String> blocks = shellBlocks("README.md");
        assertThat(blocks).hasSize(2);
        assertThat(blocks.get(1)).doesNotContain("\n");
        assertThat(read(".ci/run").lines()).containsOnlyOnce(blocks.get(1));
    }

    @Test
    void theFirstCommandMakesTheReportThatTheReadmeNames() throws IOException {
        assertThat(shellBlocks("README.md").get(0)).endsWith("report sample-captures/bass-drive-switch --out report");
        assertThat(read("README.md")).contains("`report/HL-0231.pdf`");
        assertThat(read("sample-captures/bass-drive-switch/job.yaml")).contains("number: HL-0231\n");
    }

    /**
     * The end of the first block, which makes a report, is run with the built program's place taken by the launcher over the classes under test. What stands before it, {@code apt-get} and
     * {@code mvn}, changes the machine or builds the program, and so does the whole second block: they are read by the shell and not run.
     */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theFirstCommandRuns(@TempDir Path folder) throws Exception {
        Installed program =
                Installed.in(Files.createDirectory(folder.resolve("target")).resolve("clipwitness-1"));
        FolderCopy.of(Path.of("sample-captures"), folder.resolve("sample-captures"));
        for (String block : shellBlocks("README.md")) {
            assertThat(program.shell(folder, "sh -n <<'END'\n" + block + "\nEND")
                            .printed())
                    .isEmpty();
        }
        String last = shellBlocks("README.md")
                .get(0)
                .lines()
                .reduce((before, line) -> line)
                .orElseThrow();
        assertThat(last.strip()).startsWith("target/clipwitness-*/bin/clipwitness report ");
        assertThat(program.shell(folder, last).status()).isZero();
        assertThat(folder.resolve("report/HL-0231.pdf")).exists();
    }

    /** The sheet and the table of the first job, with the exports of a sample that was captured in the same way. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theFirstJobIsReported(@TempDir Path folder) throws Exception {
        Installed program = Installed.in(folder.resolve("program"));
        Path captures = Files.createDirectories(folder.resolve("my-job/captures"));
        String table = blocks(read("README.md"), "csv");
        Files.writeString(folder.resolve("my-job/job.yaml"), blocks(read("README.md"), "yaml"));
        Files.writeString(folder.resolve("my-job/captures.csv"), table);
        for (String line : table.lines().skip(1).toList()) {
            String name = line.substring(line.indexOf('/') + 1, line.indexOf(','));
            String sample = name.replace("before", "received").replace("-50", "-050");
            Files.copy(Path.of("sample-captures/bass-drive-switch/captures", sample), captures.resolve(name));
        }
        String commands =
                "clipwitness look my-job/captures/before-50.csv\nclipwitness ready my-job\nclipwitness report my-job";
        for (String command : commands.lines().toList()) {
            assertThat(read("README.md")).contains("`" + command.replace("my-job/captures", "captures"));
            assertThat(program.shell(folder, command).status()).as(command).isZero();
        }
        assertThat(folder.resolve("my-job/report/J-0001.pdf")).exists();
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
    void everyFileNamedExists(String document) throws IOException {
        List<String> missing = PATH.matcher(read(document))
                .results()
                .map(ReadmeTest::path)
                .filter(path -> !MADE_OR_THE_USERS.matcher(path).matches())
                .filter(path -> !Files.exists(Path.of(path)))
                .filter(path -> !Files.exists(Path.of("src/main/java/clipwitness", path.split("\\."))))
                .filter(path -> SOURCES.stream().noneMatch(folder -> Files.exists(Path.of(folder, path))))
                .toList();
        assertThat(missing).isEmpty();
    }

    private static String path(MatchResult match) {
        return Stream.of(2, 3)
                .map(match::group)
                .filter(group -> group != null)
                .findFirst()
                .orElse(match.group());
    }

    @Test
    void theFirstJobOfTheReadmeIsAJob(@TempDir Path folder) throws IOException, InputException {
        String readme = read("README.md");
        String table = blocks(readme, "csv");
        Files.writeString(folder.resolve("job.yaml"), blocks(readme, "yaml"));
        Files.writeString(folder.resolve("captures.csv"), table);
        Files.createDirectory(folder.resolve("captures"));
        for (String line : table.lines().skip(1).toList()) {
            Files.createFile(folder.resolve(line.substring(0, line.indexOf(','))));
        }
        Job job = JobReader.read(folder);
        assertThat(job.sheet().states())
                .extracting(State::role)
                .containsExactly(Role.BEFORE, Role.UNCHANGED, Role.CHANGED);
        assertThat(job.captures()).hasSize(6);
    }

    /** All blocks of a language, one below the other. */
    private static String blocks(String document, String language) {
        return Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
                .matcher(document)
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.joining());
    }

    @Test
    void theReadmeStaysShort() throws IOException {
        assertThat(read("README.md").lines().count()).isLessThan(150);
    }

    /** Columns: references, folder, tests, what they hold. */
    @ParameterizedTest
    @MethodSource("fixtureRows")
    void theTableOfFixturesNamesFilesAndTestsThatAreThere(String row) {
        String[] cells = row.split("\\|", -1);
        String folder = names(cells[2]).findFirst().orElseThrow();
        assertThat(names(cells[1]).map(name -> Path.of(FIXTURES, folder, name))).allMatch(Files::exists);
        assertThat(names(cells[3])
                        .map(name -> name.contains("/") ? name : folder + "/" + name)
                        .map(name -> Path.of("src/test/java/clipwitness", name + ".java")))
                .isNotEmpty()
                .allMatch(Files::exists);
    }

    static Stream<String> fixtureRows() throws IOException {
        return read(FIXTURES + "/README.md").lines().filter(line -> line.startsWith("| `"));
    }

    private static Stream<String> names(String cell) {
        return Pattern.compile("`([^`]+)`").matcher(cell).results().map(match -> match.group(1));
    }
}
