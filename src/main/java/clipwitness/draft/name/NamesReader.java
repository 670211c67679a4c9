package clipwitness.draft.name;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Reads the names of all exports of a folder together: what one number or word means is often told by the other names. */
public final class NamesReader {
    private static final Pattern CHANNEL = Pattern.compile("(?<!\\p{L})(?:ch|chan|channel|kanal)[ -]?[1-4](?!\\d)");

    /** What instruments call a file that nobody named. */
    private static final Pattern NEW_FILE = Pattern.compile("(?<!\\p{L})new[ -]?file[ -]?\\d*");

    private final List<Entry> entries = new ArrayList<>();
    private final GainScale scale;
    private final boolean positions;
    private final Map<String, Guess<Integer>> letters;

    /**
     * A file to be read by its name.
     *
     * @param path  path from the job folder, with forward slashes
     * @param mark  the part that names the channel, where that is settled; it says nothing else then
     * @param curve whether it holds a traced curve
     */
    public record Named(String path, Optional<ChannelMark> mark, boolean curve) {
        private String text() {
            String text = mark.map(m -> m.rest().replace('\0', ' ')).orElse(path);
            return curve ? text : TakeLettersText.without(text);
        }
    }

    /** Keeps the letter of a take from being read as a word. */
    private static final class TakeLettersText {
        private static final Pattern LETTER =
                Pattern.compile("(?i)(?<=\\d|%)[ _-]?[a-d](?=(?:\\.\\p{L}[\\p{L}\\p{N}]{0,4})?$)");

        static String without(String path) {
            return LETTER.matcher(path).replaceFirst("");
        }
    }

    /** One file, while it is read. */
    private record Entry(
            Named file,
            PathWords words,
            Optional<LocalDate> date,
            Optional<Guess<String>> setting,
            Optional<Guess<String>> level,
            Optional<Guess<Double>> frequency,
            Optional<Guess<Integer>> run,
            Optional<Guess<KindWord>> kind,
            Optional<GainText> gain) {
        static Entry of(Named file) {
            PathWords words = PathWords.of(file.text());
            Optional<LocalDate> date = NameStamps.take(words);
            words.takeAll(CHANNEL);
            words.takeAll(NEW_FILE);
            Optional<Guess<String>> level = Stimuli.takeLevel(words);
            Optional<Guess<Double>> frequency = Stimuli.takeFrequency(words);
            Optional<Guess<String>> setting = OtherControls.take(words);
            Optional<Guess<KindWord>> kind = KindWords.take(words);
            Optional<Guess<Integer>> run = Occasions.take(words, file.curve());
            Optional<GainText> gain = GainText.take(words);
            return new Entry(file, words, date, setting, level, frequency, run, kind, gain);
        }

        /** Whether a number by itself could be its gain. */
        boolean mayBeBare() {
            return !file.curve() && gain.isEmpty() && kind.isEmpty();
        }
    }

    private NamesReader(List<Named> files) {
        files.forEach(f -> entries.add(Entry.of(f)));
        scale = GainScale.of(entries.stream().flatMap(e -> e.gain().stream()).toList());
        positions = BareNumbers.arePositions(entries.stream()
                .filter(Entry::mayBeBare)
                .flatMap(e -> BareNumbers.of(e.words()).stream())
                .toList());
        letters = TakeLetters.of(files.stream().map(Named::path).toList());
    }

    /** Whether a path has a word for a traced device. */
    public static boolean saysDevice(String path) {
        return PathWords.of(path).take(WordList.of(KindWord.JUNCTION)).isPresent();
    }

    /** What the names tell, in their order. */
    public static List<NameFacts> read(List<Named> files) {
        return new NamesReader(files).facts();
    }

    private List<NameFacts> facts() {
        List<Optional<GainText>> gains = entries.stream().map(this::gain).toList();
        List<Integer> records = IntStream.range(0, entries.size())
                .filter(i -> !entries.get(i).file().curve())
                .boxed()
                .toList();
        List<States.Said> ofRecords =
                new States(records.stream().map(i -> entries.get(i).words()).toList()).all();
        return IntStream.range(0, entries.size())
                .mapToObj(i -> {
                    int place = records.indexOf(i);
                    return facts(
                            entries.get(i), gains.get(i), place < 0 ? ofCurve(entries.get(i)) : ofRecords.get(place));
                })
                .toList();
    }

    /** Of a curve only a word for a state counts: other words name the device. */
    private static States.Said ofCurve(Entry entry) {
        States.Said said = new States(List.of(entry.words())).all().get(0);
        return new States.Said(
                said.state().filter(s -> !s.value().classes().isEmpty()).map(s -> s.map(NamesReader::bare)),
                Optional.empty());
    }

    private static StateName bare(StateName name) {
        StateWords words = StateWords.of(name.words());
        return new StateName(
                String.join(
                        " ",
                        words.words().stream().filter(words.known()::contains).toList()),
                name.classes());
    }

    private Optional<GainText> gain(Entry entry) {
        boolean bare =
                positions && entry.mayBeBare() && BareNumbers.of(entry.words()).isPresent();
        return bare ? Optional.of(BareNumbers.take(entry.words())) : entry.gain();
    }

    private NameFacts facts(Entry entry, Optional<GainText> gain, States.Said said) {
        List<String> questions = new ArrayList<>();
        Optional<Guess<Double>> percent = gain.flatMap(g -> scale.percent(g).map(p -> new Guess<>(p, g.reason())));
        if (gain.isPresent() && percent.isEmpty() && !entry.file().curve()) {
            questions.add("which position of the gain control is " + gain.get().reason()
                    + "? Write it in percent of the rotation in column gain");
        }
        boolean curve = entry.file().curve();
        String path = entry.file().path();
        return new NameFacts(
                entry.kind(),
                said.state(),
                curve ? Optional.empty() : percent,
                entry.run().or(() -> Optional.ofNullable(letters.get(path))),
                entry.frequency(),
                entry.level(),
                entry.setting().or(() -> entry.kind().isEmpty() ? said.setting() : Optional.empty()),
                entry.date(),
                entry.file().mark(),
                curve ? DeviceName.of(path) : Optional.empty(),
                questions);
    }
}
