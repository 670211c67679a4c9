package clipwitness.draft;

import clipwitness.draft.name.Guess;
import clipwitness.draft.name.NameFacts;
import clipwitness.draft.name.NamesReader;
import clipwitness.job.Role;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes a draft of exports: names and contents to rows, rows to states, stimulus and questions. */
public final class Drafter {
    private static final int LONGEST_NUMBER = 100;
    private static final String USUAL = "usual";

    private Drafter() {}

    /**
     * The draft of a folder.
     *
     * @param folder   the folder's name
     * @param sources  its exports, in the order in which the table is to list them
     * @param pictures paths of its pictures
     * @param newest   day on which the newest export was saved
     */
    public static Draft of(String folder, List<DraftedExport> sources, List<String> pictures, LocalDate newest) {
        List<DraftRow> rows = rows(sources);
        List<DraftState> states =
                DraftStates.of(rows.stream().flatMap(r -> r.state().stream()).toList());
        StimulusFound stimulus = StimulusFound.of(rows);
        List<DraftRow> finished = rows.stream()
                .sorted(Comparator.comparingInt((DraftRow r) -> place(r, states))
                        .thenComparingDouble(Drafter::gain))
                .map(stimulus::applied)
                .toList();
        return new Draft(
                number(folder),
                date(rows, newest),
                stimulus,
                settings(rows),
                states,
                finished,
                pictures,
                questions(states, finished));
    }

    /** Waves come first, in the order in which the gain control is turned up; all else as its files are called. */
    private static double gain(DraftRow row) {
        return row.kind().value() == DraftKind.WAVEFORM
                ? row.facts().gain().map(Guess::value).orElse(Double.POSITIVE_INFINITY)
                : Double.POSITIVE_INFINITY;
    }

    private static List<DraftRow> rows(List<DraftedExport> sources) {
        ChannelFiles halves = new ChannelFiles(sources);
        List<DraftedExport> listed =
                sources.stream().filter(s -> !halves.isInput(s)).toList();
        List<NameFacts> facts = NamesReader.read(listed.stream()
                .map(s -> new NamesReader.Named(s.path(), halves.mark(s), isCurve(s)))
                .toList());
        Kinds kinds = new Kinds(StimulusFound.frequency(listed, facts));
        List<DraftRow> rows = SteppedSines.found(IntStream.range(0, listed.size())
                .mapToObj(i -> row(listed.get(i), facts.get(i), kinds, halves))
                .toList());
        ChannelUses uses = new ChannelUses(rows);
        return rows.stream().map(uses::of).toList();
    }

    private static boolean isCurve(DraftedExport export) {
        Content.Type type = export.content().type();
        return type == Content.Type.CURVE || (type == Content.Type.UNSTATED && NamesReader.saysDevice(export.path()));
    }

    private static DraftRow row(DraftedExport source, NameFacts facts, Kinds kinds, ChannelFiles halves) {
        return new DraftRow(
                source,
                facts,
                kinds.of(
                        source,
                        facts,
                        halves.inputOf(source).isEmpty() && facts.frequency().isEmpty()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                halves.inputOf(source));
    }

    /** Rows stand state by state, and in a state kind by kind; devices stand last. */
    private static int place(DraftRow row, List<DraftState> states) {
        List<String> names = states.stream().map(DraftState::name).toList();
        int state = row.state().map(s -> names.indexOf(DraftStates.name(s))).orElse(names.size());
        int kinds = DraftKind.values().length;
        return (row.kind().value() == DraftKind.JUNCTION ? 1 + names.size() : state) * kinds
                + List.of(DraftKind.values()).indexOf(row.kind().value());
    }

    private static Guess<String> number(String folder) {
        String plain = Normalizer.normalize(folder, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replace("ß", "ss")
                .replaceAll("[^A-Za-z0-9._-]+", "-")
                .replaceAll("^[.-]+|[.-]+$", "");
        String cut = plain.substring(0, Math.min(plain.length(), LONGEST_NUMBER));
        return new Guess<>(cut.isEmpty() ? "draft" : cut, "the name of the folder");
    }

    private static Guess<String> date(List<DraftRow> rows, LocalDate newest) {
        return rows.stream()
                .flatMap(r -> r.facts().date().stream())
                .max(LocalDate::compareTo)
                .map(d -> new Guess<>(d.toString(), "the latest day in the names of the exports"))
                .orElseGet(() -> new Guess<>(newest.toString(), "the day on which the newest export was saved"));
    }

    private static Map<String, String> settings(List<DraftRow> rows) {
        Map<String, String> settings = new LinkedHashMap<>();
        List<DraftRow> records = rows.stream()
                .filter(r -> r.kind().value() != DraftKind.JUNCTION)
                .toList();
        boolean some = records.stream().anyMatch(r -> r.facts().setting().isPresent());
        if (some && records.stream().anyMatch(r -> r.facts().setting().isEmpty())) {
            settings.put(USUAL, "all other controls as usual");
        }
        records.forEach(r -> r.facts()
                .setting()
                .ifPresent(s -> settings.putIfAbsent(s.value(), s.value() + ", all others as usual")));
        return settings;
    }

    private static List<String> questions(List<DraftState> states, List<DraftRow> rows) {
        List<String> questions = new ArrayList<>();
        if (rows.stream().allMatch(r -> r.kind().value() == DraftKind.JUNCTION)) {
            questions.add(
                    "only traced devices were found: where are the captures of the unit? Without any, the command pair ranks"
                            + " the devices without a job");
        }
        if (states.stream()
                .noneMatch(s -> s.role().filter(r -> r.value() == Role.BEFORE).isPresent())) {
            questions.add(
                    "which state is the one before the work, with which the others are compared? Give it role: before");
        }
        states.stream()
                .filter(s -> s.role().isEmpty())
                .forEach(s -> questions.add("which role has the state " + s.name()
                        + "? Take the # away before one of its lines in job.yaml"));
        states.forEach(s -> s.doubt().ifPresent(d -> questions.add("state " + s.name() + ": " + d)));
        rows.forEach(r -> r.questions().forEach(q -> questions.add(r.source().path() + ": " + q)));
        rows.forEach(r -> StimulusFound.question(r)
                .ifPresent(q -> questions.add(r.source().path() + ": " + q)));
        List<DraftRow> open = rows.stream().filter(DraftRow::lacksState).toList();
        if (!open.isEmpty()) {
            questions.add("which state do these files show: "
                    + Listed.of(open.stream().map(r -> r.source().path()).toList())
                    + "? Write it in column state of captures.csv");
        }
        OpenGains.question(rows).ifPresent(questions::add);
        rows.stream()
                .filter(ChannelUses::areOpen)
                .forEach(r -> questions.add(r.source().path() + ": which of its channels ("
                        + String.join(
                                ", ",
                                r.source().content().channels().stream()
                                        .map(Content.Heard::name)
                                        .toList())
                        + ") are input and output? Write them in columns input and output"));
        rows.stream()
                .filter(r -> r.source().content().type() == Content.Type.UNSTATED)
                .forEach(r -> questions.add(
                        r.source().path() + ": " + r.source().content().reason()));
        return questions;
    }
}
