package clipwitness;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.cli.Clipwitness;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
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
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the manual says about commands, keys and codes is so. */
class ManualTest {
    private static final Path MANUAL = Path.of("src/site/markdown");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+\\.md)\\)");
    private static final Pattern CODE = Pattern.compile("`([a-z][a-z-]*)`");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    /** Options whose value is no path. */
    private static final Set<String> VALUES =
            Set.of("--scale", "--unit", "--interval", "--temperature", "--page-time", "--pages");

    private static final Set<String> BUILT_IN = Set.of("customer", "bench");

    private static String page(String name) throws IOException {
        return Files.readString(MANUAL.resolve(name));
    }

    static Stream<String> pages() throws IOException {
        try (Stream<Path> files = Files.list(MANUAL)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList().stream();
        }
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

    /** Each page's commands in their order, in one folder that holds the samples and the templates. */
    @ParameterizedTest
    @MethodSource("pages")
    void everyCommandBlockRuns(String name, @TempDir Path folder) throws IOException {
        copy(Path.of("sample-captures"), folder.resolve("sample-captures"));
        copy(Path.of("report-templates"), folder.resolve("report-templates"));
        for (String block : blocks(page(name), "sh")) {
            for (String line : block.strip().lines().toList()) {
                run(words(line), folder);
            }
        }
        if (name.equals("first-report.md")) {
            assertThat(folder.resolve("my-first-job/report/my-first-job.pdf")).exists();
            assertThat(folder.resolve("plan.pdf")).exists();
        }
    }

    private static List<String> words(String line) {
        return WORD.matcher(line)
                .results()
                .map(m -> m.group(1) != null ? m.group(1) : m.group(2))
                .toList();
    }

    private static void run(List<String> words, Path folder) throws IOException {
        switch (words.get(0)) {
            case "cp" -> copy(folder.resolve(words.get(2)), folder.resolve(words.get(3)));
            case "rm" -> {
                for (String file : words.subList(1, words.size())) {
                    Files.delete(folder.resolve(file));
                }
            }
            case "mkdir" -> Files.createDirectory(folder.resolve(words.get(1)));
            case "clipwitness" -> clipwitness(words.subList(1, words.size()), folder);
            default -> throw new AssertionError("not a command of the manual: " + words);
        }
    }

    private static void clipwitness(List<String> words, Path folder) {
        List<String> args = new ArrayList<>(List.of(words.get(0)));
        for (int i = 1; i < words.size(); i++) {
            String word = words.get(i);
            boolean value = VALUES.contains(words.get(i - 1)) || BUILT_IN.contains(word);
            args.add(word.startsWith("-") || value ? word : folder.resolve(word).toString());
        }
        StringWriter err = new StringWriter();
        int status = new Clipwitness(new PrintWriter(new StringWriter()), new PrintWriter(err, true))
                .run(args.toArray(String[]::new));
        assertThat(status).as(words + ": " + err).isBetween(0, 1);
        assertThat(err.toString().lines().filter(l -> !l.startsWith("Warning: ")))
                .as(words.toString())
                .isEmpty();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.forEach(f -> {
                try {
                    Files.copy(f, to.resolve(from.relativize(f).toString()));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
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
        return Stream.of(reasons, others, errors)
                .flatMap(codes -> codes)
                .collect(Collectors.toCollection(TreeSet::new));
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
