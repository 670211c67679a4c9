package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Told;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.JobResults;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import clipwitness.words.Speech;
import clipwitness.words.WordBundle;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The wording of the report of one job: its words, its numbers, its names for states and conditions. */
public final class JobWording {
    private static final String COUNT = "count.";

    private static final int LEAST_OF_A_RUN = 3;

    private final WordBundle words;
    private final NumberText numbers;
    private final JobResults results;
    private final boolean severalFrequencies;
    private final boolean severalLevels;
    private final boolean severalSettings;
    private final boolean several;

    /** The words for a job. */
    public JobWording(WordBundle words, JobResults results) {
        this(words, NumberText.in(results.job().sheet().report().language()), results);
    }

    private JobWording(WordBundle words, NumberText numbers, JobResults results) {
        this.words = words;
        this.results = results;
        this.numbers = numbers;
        List<Condition> waves = results.captures().stream()
                .map(CaptureResult::row)
                .filter(r -> r.kind() == CaptureKind.WAVEFORM)
                .map(CaptureRow::condition)
                .toList();
        this.severalFrequencies =
                waves.stream().map(Condition::frequency).distinct().count() > 1;
        this.severalLevels = waves.stream().map(Condition::level).distinct().count() > 1;
        this.severalSettings = waves.stream().map(Condition::setting).distinct().count() > 1;
        this.several = waves.stream().distinct().count() > 1;
    }

    /** English words and numbers, whatever the language of the report. */
    public static JobWording english(JobResults results) {
        WordBundle english = WordBundle.builtIn();
        return new JobWording(english, NumberText.in(english.language()), results);
    }

    /** A sentence of the words. */
    public String say(String name, String... holes) {
        return words.say(name, holes);
    }

    /** What tells one condition from another: empty in a job whose waves were all captured under one, so that no sentence repeats it. */
    public String apart(String place) {
        return several ? place : "";
    }

    /** A condition as a sentence says it; empty where it has no name in this job. */
    public String named(Condition condition) {
        return String.join(", ", parts(condition));
    }

    /** Whether the job's waves were captured under more than one condition. */
    boolean several() {
        return several;
    }

    /** Puts statements into the words and numbers of this report. */
    public Speech speech() {
        return new Speech(words, numbers);
    }

    /** Why something is not known, as a clause; empty where it is. */
    public String reason(Optional<Reason> reason) {
        return speech().clause(reason).orElse("");
    }

    /** Numbers. */
    public NumberText numbers() {
        return numbers;
    }

    /** What the report calls a state. */
    public String label(String state) {
        return results.job().sheet().label(state);
    }

    /** The short name of a state in the head of a table or at the beginning of a row. */
    public String headed(String state) {
        return say("table.state.name", "state", called(state));
    }

    /** What a sentence calls a state. */
    public String called(String state) {
        return results.job().sheet().called(state);
    }

    /** The results that are spoken of. */
    JobResults results() {
        return results;
    }

    /** A figure as text. */
    public Amount amount(Measured measured) {
        return Amount.of(measured, numbers);
    }

    /** A figure as text without prefix, to at most so many decimals. */
    public Amount amount(Measured measured, int decimals) {
        return Amount.coarse(measured, decimals, numbers);
    }

    /** A position of the gain control that was found, not set: nobody reads it to less than a tenth of a percent. */
    public Amount rotation(Measured percent) {
        return amount(Told.rotation(percent), 1);
    }

    /** Figures of one kind in one common scale; empty amounts where there is none. */
    public List<Amount> together(List<Optional<Measured>> figures, boolean signed) {
        double largest = figures.stream()
                .flatMap(Optional::stream)
                .flatMap(m -> m.asValue().stream())
                .mapToDouble(Amount::largest)
                .max()
                .orElse(0);
        return figures.stream()
                .map(f -> f.map(m -> Amount.of(m, largest, numbers, signed)).orElse(Amount.none(Optional.empty())))
                .toList();
    }

    /** Name of a quantity inside a sentence. */
    public String quantity(ItemQuantity quantity) {
        return words.say("quantity." + quantity.key());
    }

    /** The word of a decision: pass, fail, undecided, described. */
    public String decision(Decision decision) {
        return say("verdict." + decision.code());
    }

    /** The unit of a quantity's change. */
    public String unit(ItemQuantity quantity) {
        return speech().sayOr("unit.change." + quantity.key(), quantity.symbol());
    }

    /** A condition, as far as it says something in this job: {@code 50 % gain, 200 Hz}, {@code full gain}. */
    public String condition(Condition condition) {
        Set<String> parts = parts(condition);
        return parts.isEmpty() ? words.say("condition.none") : String.join(", ", parts);
    }

    /** Whether a condition says anything in this job. */
    public boolean says(Condition condition) {
        return !parts(condition).isEmpty();
    }

    private Set<String> parts(Condition condition) {
        Set<String> parts = new LinkedHashSet<>();
        condition.gainPercent().ifPresent(g -> parts.add(speech().gain(g)));
        if (severalFrequencies) {
            condition.frequency().ifPresent(f -> parts.add(numbers.nominal(f, Unit.HERTZ)));
        }
        if (severalLevels) {
            condition.level().ifPresent(v -> parts.add(numbers.nominal(v, Unit.VOLT)));
        }
        if (severalSettings) {
            condition.setting().ifPresent(parts::add);
        }
        return parts;
    }

    /** Where an item stands in a list: what it is about, its frequency where that is its own, and its condition. */
    public String place(Item item) {
        List<String> parts = new ArrayList<>(subject(item).stream().toList());
        frequency(item).ifPresent(parts::add);
        if (!item.condition().equals(Condition.NONE) && (parts.isEmpty() || says(controls(item)))) {
            parts.add(condition(controls(item)));
        }
        return String.join(", ", parts);
    }

    /** What an item is about and where, as short as can be: {@code level}, {@code supply}, {@code 8 kHz}. */
    public String told(Item item) {
        return subject(item)
                .filter(s -> item.quantity() == ItemQuantity.RAIL)
                .or(() -> frequency(item))
                .orElseGet(() -> say("quantity.short." + item.quantity().key()));
    }

    /** Where a sentence says an item to be: {@code 8 kHz and full gain}; empty in a job that has but one such place. */
    String named(Item item) {
        if (item.condition().equals(Condition.NONE)) {
            return "";
        }
        String controls = named(controls(item));
        return frequency(item)
                .map(f -> controls.isEmpty() ? f : list(List.of(f, controls)))
                .orElse(controls);
    }

    /** Where several items of one quantity are: their conditions, or for the frequency response the frequencies from which to which. */
    String places(List<Item> items) {
        List<String> places = items.stream()
                .map(i -> subject(i)
                        .orElseGet(() -> frequency(i).isPresent() ? named(controls(i)) : condition(controls(i))))
                .filter(p -> !p.isEmpty())
                .distinct()
                .toList();
        Optional<String> run = runOfSettings(items);
        if (run.isPresent()) {
            return run.get();
        }
        boolean told = several || items.stream().anyMatch(i -> i.subject().isPresent());
        String range = range(items);
        String list = told ? list(places) : "";
        return range.isEmpty() || list.isEmpty() ? range + list : range + ", " + list;
    }

    /** From which to which setting, where some items are of three or more neighbouring settings of all that were captured; else empty. */
    private Optional<String> runOfSettings(List<Item> items) {
        List<Condition> captured = results.captures().stream()
                .map(CaptureResult::row)
                .filter(r -> r.kind() == CaptureKind.WAVEFORM)
                .map(CaptureRow::condition)
                .distinct()
                .sorted(Comparator.comparingDouble(c -> c.gainPercent().orElse(-1)))
                .toList();
        List<Condition> meant = captured.stream()
                .filter(c -> items.stream().anyMatch(i -> i.condition().equals(c)))
                .toList();
        boolean alone = items.stream()
                .allMatch(i -> i.quantity().isOfWaves() && subject(i).isEmpty());
        if (!alone
                || meant.size() < LEAST_OF_A_RUN
                || meant.size() != items.size()
                || severalFrequencies
                || severalLevels
                || severalSettings) {
            return Optional.empty();
        }
        Condition first = meant.get(0);
        Condition last = meant.get(meant.size() - 1);
        boolean neighbours = captured.indexOf(last) - captured.indexOf(first) == meant.size() - 1;
        return neighbours
                ? Optional.of(say("range", "from", condition(first), "to", condition(last)))
                : Optional.empty();
    }

    private String range(List<Item> items) {
        List<Item> own = items.stream()
                .filter(i -> frequency(i).isPresent())
                .sorted(Comparator.comparingDouble(
                        i -> i.condition().frequency().orElseThrow()))
                .toList();
        if (own.isEmpty()) {
            return "";
        }
        String low = frequency(own.get(0)).orElseThrow();
        String high = frequency(own.get(own.size() - 1)).orElseThrow();
        return low.equals(high) ? low : say("range", "from", low, "to", high);
    }

    /** The frequency of an item of the frequency response, which is its own, not that of the waves. */
    private Optional<String> frequency(Item item) {
        OptionalDouble frequency = item.condition().frequency();
        return item.quantity() == ItemQuantity.RESPONSE && frequency.isPresent()
                ? Optional.of(numbers.frequency(frequency.getAsDouble()))
                : Optional.empty();
    }

    private static Condition controls(Item item) {
        return item.quantity() == ItemQuantity.RESPONSE ? item.condition().withoutFrequency() : item.condition();
    }

    /** What an item is about, where there are several of its quantity under its condition. */
    public Optional<String> subject(Item item) {
        return item.subject().map(ItemSubject::words).map(speech()::text);
    }

    /** A stated share of rotation: {@code 25 %}. */
    public String percent(double percent) {
        return numbers.nominal(percent, Unit.PERCENT);
    }

    /**
     * {@code all five gain settings}, or conditions where they differ in more than the gain; {@code the four gain settings where it is
     * judged} where some of those captured are not among them.
     *
     * @param meant    conditions that are spoken of
     * @param captured conditions that were captured, at least these
     */
    public String settings(Collection<Condition> meant, Collection<Condition> captured) {
        Set<Condition> distinct = new LinkedHashSet<>(meant);
        String kind = kind(distinct);
        if (new LinkedHashSet<>(captured).size() > distinct.size()) {
            kind += "judged.";
        }
        return switch (distinct.size()) {
            case 1 -> words.say(kind + "one");
            case 2 -> words.say(kind + "both");
            default -> words.say(kind + "all", "count", count(distinct.size()));
        };
    }

    /** {@code four of five gain settings}, or conditions where they differ in more than the gain. */
    public String settingsOf(Collection<Condition> meant, Collection<Condition> all) {
        Set<Condition> distinct = new LinkedHashSet<>(all);
        return words.say(
                kind(distinct) + "some",
                "count",
                count(new LinkedHashSet<>(meant).size()),
                "all",
                count(distinct.size()));
    }

    private static String kind(Set<Condition> conditions) {
        Set<OptionalDouble> gains = new LinkedHashSet<>();
        conditions.forEach(c -> gains.add(c.gainPercent()));
        return gains.size() == conditions.size() && !gains.contains(OptionalDouble.empty())
                ? "settings."
                : "conditions.";
    }

    /** So many figures. */
    public String items(int count) {
        return counted("items", count);
    }

    /** So many of something that has a word for one and a word for many. */
    String counted(String name, int count) {
        return count == 1 ? words.say(name + ".one") : words.say(name + ".many", "count", count(count));
    }

    /** So many figures of all: {@code three of six figures}, both in letters or both in digits. */
    public String items(int count, int all) {
        boolean letters = words.has(COUNT + count) && words.has(COUNT + all);
        return words.say(
                "items.of",
                "count",
                letters ? count(count) : Integer.toString(count),
                "all",
                letters ? count(all) : Integer.toString(all));
    }

    /** A whole number, in letters where the words have it. */
    public String count(int number) {
        String name = COUNT + number;
        return words.has(name) ? words.say(name) : Integer.toString(number);
    }

    /** {@code a, b and c}. */
    public String list(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        String head = String.join(", ", parts.subList(0, parts.size() - 1));
        return head + " " + words.say("list.and") + " " + parts.get(parts.size() - 1);
    }
}
