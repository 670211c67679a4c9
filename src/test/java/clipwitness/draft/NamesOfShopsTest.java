package clipwitness.draft;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.draft.name.Guess;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Names as repair shops give them, folder by folder: {@code names.txt}. */
class NamesOfShopsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    /** A line of the file. */
    private record Line(String path, String content, Map<String, String> expected) {
        static Line of(String text) {
            String[] parts = text.split(" \\| ", -1);
            Map<String, String> expected = new TreeMap<>();
            for (String pair : parts[2].split("; ", -1)) {
                expected.put(pair.split("=", 2)[0].strip(), pair.split("=", 2)[1].strip());
            }
            expected.putIfAbsent("kind", "waveform");
            return new Line(parts[0], parts[1], expected);
        }
    }

    static Stream<List<Line>> folders() throws IOException {
        try (InputStream in = NamesOfShopsTest.class.getResourceAsStream("names.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            List<List<Line>> folders = Arrays.stream(text.split("\\n\\s*\\n", -1))
                    .map(b -> b.lines()
                            .filter(l -> !l.startsWith("#"))
                            .map(Line::of)
                            .toList())
                    .filter(b -> !b.isEmpty())
                    .toList();
            return folders.stream();
        }
    }

    @Test
    void theTableHoldsMoreThanAHundredNames() throws IOException {
        assertThat(folders().mapToInt(List::size).sum()).isGreaterThan(100);
    }

    @ParameterizedTest
    @MethodSource("folders")
    void everyNameIsReadAsAPractitionerReadsIt(List<Line> folder) {
        Draft draft = Drafter.of(
                "job",
                folder.stream()
                        .map(l -> new DraftedExport(l.path(), content(l.content())))
                        .toList(),
                List.of(),
                DAY);
        Map<String, DraftRow> rows = new LinkedHashMap<>();
        draft.rows().forEach(r -> rows.put(r.source().path(), r));
        List<String> found = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (Line line : folder) {
            found.add(line.path() + " " + read(rows.get(line.path()), draft, line.expected()));
            expected.add(line.path() + " " + line.expected());
        }
        assertThat(found).containsExactlyElementsOf(expected);
    }

    /** An instrument numbers its files: such names do not tell where the control stood, and a table without it would call the waves repeated captures. */
    @Test
    void wavesOfOneStateThatNothingTellsApartAreAskedFor() {
        Draft draft = draftOf("before/SDS00001.csv", "before/SDS00002.csv", "after/SDS00001.csv", "after/g50.csv");
        assertThat(draft.questions())
                .anySatisfy(q -> assertThat(q)
                        .contains("gain control", "before/SDS00001.csv, before/SDS00002.csv?")
                        .doesNotContain("after"));
    }

    @Test
    void wavesWithTheirPositionsAndOneWaveOfAStateAskForNone() {
        Draft draft = draftOf("before g50.csv", "before g100.csv", "mod on.csv");
        assertThat(draft.questions()).noneMatch(q -> q.contains("gain control"));
    }

    private static Draft draftOf(String... paths) {
        return Drafter.of(
                "job",
                Arrays.stream(paths)
                        .map(p -> new DraftedExport(p, content("tone")))
                        .toList(),
                List.of(),
                DAY);
    }

    private static Map<String, String> read(DraftRow row, Draft draft, Map<String, String> expected) {
        Map<String, String> read = new TreeMap<>();
        read.put("kind", row.kind().value().code());
        row.state().ifPresent(s -> read.put("state", DraftStates.name(s)));
        if (row.lacksState()) {
            read.put("state", "?");
        }
        if (expected.containsKey("role")) {
            read.put("role", role(draft, read.get("state")));
        }
        row.facts().gain().ifPresent(g -> read.put("gain", Rounded.plain(g.value())));
        row.frequency().ifPresent(f -> read.put("frequency", Rounded.plain(f.value())));
        row.level().ifPresent(l -> read.put("level", l.value()));
        row.facts().run().ifPresent(r -> read.put("run", Integer.toString(r.value())));
        row.facts().device().ifPresent(d -> read.put("device", d.value()));
        row.facts().date().ifPresent(d -> read.put("date", d.toString()));
        row.facts().setting().ifPresent(s -> read.put("setting", s.value()));
        if (!row.questions().isEmpty()) {
            read.put("question", "yes");
        }
        return read;
    }

    private static String role(Draft draft, String state) {
        return draft.states().stream()
                .filter(s -> s.name().equals(state))
                .findFirst()
                .flatMap(DraftState::role)
                .map(Guess::value)
                .map(r -> r.code())
                .orElse("?");
    }

    private static Content content(String type) {
        if (type.startsWith("tone")) {
            String[] parts = type.split("[=@]", -1);
            double hertz = parts.length > 1 ? Double.parseDouble(parts[1]) : 1000;
            double volts = parts.length > 2 ? Double.parseDouble(parts[2]) : 0.1;
            List<Content.Heard> channels = List.of(tone("in", hertz, volts), tone("out", hertz, 1));
            return new Content(
                    Content.Type.TONE,
                    type.startsWith("tone1") ? channels.subList(1, 2) : channels,
                    5000,
                    1e-5,
                    "a tone");
        }
        return switch (type) {
            case "curve" -> new Content(Content.Type.CURVE, List.of(), 100, 0, "a curve");
            case "driven" ->
                new Content(Content.Type.DRIVEN, List.of(silent("in"), silent("out")), 5000, 1e-5, "driven");
            case "quiet" -> new Content(Content.Type.QUIET, List.of(silent("out")), 5000, 1e-5, "no steady tone");
            case "played" -> new Content(Content.Type.PLAYED, List.of(silent("1")), 5000, 1e-5, "comes and goes");
            default -> throw new IllegalArgumentException(type);
        };
    }

    private static Content.Heard tone(String name, double hertz, double volts) {
        return new Content.Heard(name, OptionalDouble.of(hertz), OptionalDouble.of(volts), OptionalDouble.of(0.2));
    }

    private static Content.Heard silent(String name) {
        return new Content.Heard(name, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
