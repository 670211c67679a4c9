package clipwitness;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.finding.Finding;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fixture.FolderCopy;
import clipwitness.fixture.Installed;
import clipwitness.job.JobSheet;
import clipwitness.job.read.JobReader;
import clipwitness.reason.BenchRemark;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.HintCode;
import clipwitness.reason.Phrase;
import clipwitness.reason.ResponseReason;
import clipwitness.words.WordBundle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;

/** What the manual says about commands, keys and codes is so. */
class ManualTest {
    private static final Path MANUAL = Path.of("src/site/markdown");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+\\.md)\\)");
    private static final Pattern CODE = Pattern.compile("`([a-z][a-z-]*)`");
    private static final Pattern FINDING_CODE = Pattern.compile("String code\\(\\) \\{\\s+return \"([a-z-]+)\"");
    private static final Pattern PICTURE = Pattern.compile("!\\[([^\\]]*)\\]\\(([^)]+)\\)");
    /** A message that ends in a code, and is no warning. */
    private static final Pattern ERROR = Pattern.compile("(?!Warning: ).* \\[[a-z-]+\\]");

    private static String page(String name) throws IOException {
        return Files.readString(MANUAL.resolve(name));
    }

    static Stream<String> pages() throws IOException {
        try (Stream<Path> files = Files.list(MANUAL)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList().stream();
        }
    }

    static Stream<String> pagesWithCommands() throws IOException {
        List<String> with = new ArrayList<>();
        for (String name : pages().toList()) {
            if (!blocks(page(name), "sh").isEmpty()) {
                with.add(name);
            }
        }
        return with.stream();
    }

    private static List<String> blocks(String text, String language) {
        return Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
                .matcher(text)
                .results()
                .map(m -> m.group(1))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsToAPage(String name) throws IOException {
        assertThat(LINK.matcher(page(name)).results().map(m -> MANUAL.resolve(m.group(1))))
                .allMatch(Files::exists);
    }

    @Test
    void theFirstPageLeadsToAllOthers() throws IOException {
        String index = page("index.md");
        assertThat(pages().filter(p -> !p.equals("index.md"))).allMatch(p -> index.contains("](" + p + ")"));
    }

    /** Each page's commands in their order, by the launcher, in one folder that holds the samples and the templates. */
    @ParameterizedTest
    @MethodSource("pagesWithCommands")
    @DisabledOnOs(OS.WINDOWS)
    void everyCommandBlockRuns(String name, @TempDir Path temp) throws Exception {
        List<String> blocks = blocks(page(name), "sh");
        Installed program = Installed.in(temp.resolve("the program"));
        Path folder = Files.createDirectory(temp.resolve("bench"));
        FolderCopy.of(Path.of("sample-captures"), folder.resolve("sample-captures"));
        FolderCopy.of(Path.of("report-templates"), folder.resolve("report-templates"));
        for (String block : blocks) {
            Installed.Run run = program.shell(folder, block);
            assertThat(run.status()).as(block + run.printed()).isZero();
            assertThat(run.printed().lines().filter(l -> ERROR.matcher(l).matches()))
                    .as(block)
                    .isEmpty();
        }
        if (name.equals("first-report.md")) {
            assertThat(folder.resolve("my-first-job/report/my-first-job.pdf")).exists();
            assertThat(folder.resolve("plan.pdf")).exists();
        }
        if (name.equals("examples.md")) {
            assertThat(folder.resolve("out").toFile().list())
                    .contains("EX-1.pdf", "EX-2.pdf", "EX-3.pdf", "HL-0241.pdf", "summary.html");
            assertThat(folder.resolve("out/EX-3-results.json"))
                    .content()
                    .containsPattern("\"compressionPoint\" : \\[ \\{");
        }
    }

    /** Pictures are there, say in words what they show, and fetch nothing. */
    @ParameterizedTest
    @MethodSource("pages")
    void everyPictureIsThereAndSaidInWords(String name) throws Exception {
        for (MatchResult picture : PICTURE.matcher(page(name)).results().toList()) {
            assertThat(picture.group(1)).hasSizeGreaterThan(60);
            Path file = MANUAL.resolve(picture.group(2));
            Document drawing =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
            assertThat(drawing.getElementsByTagName("title").getLength()).isOne();
            assertThat(drawing.getElementsByTagName("desc").getLength()).isOne();
            assertThat(Files.readString(file)).doesNotContain("href", "url(", "<script");
        }
    }

    /** The blocks of the sheet's page are one sheet, but for number and date. */
    @Test
    void theSheetsBlocksAreASheet(@TempDir Path folder) throws IOException, InputException {
        String sheet =
                "report: {number: J-1, date: 2026-05-04}\n" + String.join("", blocks(page("job-sheet.md"), "yaml"));
        Files.writeString(folder.resolve("job.yaml"), sheet);
        JobSheet read = JobReader.readSheet(folder);
        assertThat(read.states()).hasSize(3);
        assertThat(read.settings()).hasSize(2);
        assertThat(read.rails()).hasSize(2);
        assertThat(read.clipper()).isPresent();
    }

    @Test
    void theLinesOfWordsThatTheTemplatesPageRewordsAreThere() throws IOException {
        assertThat(blocks(page("templates.md"), "properties"))
                .hasSize(1)
                .allSatisfy(block -> assertThat(block.strip().lines().map(l -> l.substring(0, l.indexOf(" ="))))
                        .allMatch(WordBundle.builtIn()::has));
    }

    @Test
    void everyCodeHasItsRowWithCauseAndRemedy() throws IOException {
        Set<String> missing = new TreeSet<>(codes());
        missing.removeAll(rows());
        assertThat(missing).isEmpty();
    }

    @Test
    void noRowIsAboutACodeThatDoesNotExist() throws IOException {
        Set<String> unknown = new TreeSet<>(rows());
        unknown.removeAll(codes());
        assertThat(unknown).isEmpty();
    }

    private static Set<String> codes() {
        Stream<String> reasons = Stream.<Phrase[]>of(
                        FigureReason.values(),
                        DeviceReason.values(),
                        ComparisonReason.values(),
                        ResponseReason.values(),
                        FrameReason.values(),
                        DoubtReason.values(),
                        BenchRemark.values())
                .flatMap(Stream::of)
                .map(Phrase::code);
        Stream<String> others = Stream.concat(
                Stream.of(DoubtCode.values()).map(DoubtCode::code),
                Stream.of(HintCode.values()).map(HintCode::code));
        Stream<String> errors = Stream.of(ErrorCode.values()).map(ErrorCode::code);
        Stream<String> findings =
                Stream.of(Finding.class.getPermittedSubclasses()).map(ManualTest::codeOf);
        return Stream.of(reasons, others, errors, findings)
                .flatMap(codes -> codes)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The code that the source of a finding states: a finding itself needs figures. */
    private static String codeOf(Class<?> finding) {
        Path source = Path.of("src/main/java", finding.getName().replace('.', '/') + ".java");
        try {
            return FINDING_CODE
                    .matcher(Files.readString(source))
                    .results()
                    .map(m -> m.group(1))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Codes in the first cell of rows whose other two cells say something. */
    private static Set<String> rows() throws IOException {
        return page("codes.md")
                .lines()
                .filter(l -> l.startsWith("| `"))
                .map(l -> l.split("\\|", -1))
                .filter(c -> c.length == 5 && !c[2].isBlank() && !c[3].isBlank())
                .flatMap(c -> CODE.matcher(c[1]).results().map(m -> m.group(1)))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
