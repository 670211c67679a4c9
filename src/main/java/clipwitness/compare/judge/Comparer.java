package clipwitness.compare.judge;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.NoPair;
import clipwitness.compare.result.NotExamined;
import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes the comparisons that the job sheet asks for. */
public final class Comparer {
    private final Job job;
    private final Catalogue catalogue;
    private final Repeatability repeatability;
    private final List<ItemSource> captures;
    private final ItemSource readings;

    /**
     * Comparisons of waves and of more.
     *
     * @param captures items of captures that are no waves
     * @param readings items of meter readings, which alone cannot pass a comparison
     */
    public Comparer(
            Job job, Catalogue catalogue, Repeatability repeatability, List<ItemSource> captures, ItemSource readings) {
        this.job = job;
        this.catalogue = catalogue;
        this.repeatability = repeatability;
        this.captures = List.copyOf(captures);
        this.readings = readings;
    }

    /** The comparisons, in the sheet's order. */
    public List<Comparison> all() {
        List<Comparison> comparisons = new ArrayList<>();
        for (State state : job.sheet().states()) {
            Intent intent = state.role() == Role.UNCHANGED ? Intent.UNCHANGED : Intent.CHANGED;
            state.against().ifPresent(from -> comparisons.add(compare(from, state.name(), intent)));
            state.alsoAgainst().forEach(from -> comparisons.add(compare(from, state.name(), Intent.DESCRIBED)));
        }
        return comparisons;
    }

    private Comparison compare(String from, String to, Intent intent) {
        ItemBuilder builder = new ItemBuilder(job.sheet().limits(), repeatability, Drift.of(job.sheet()), intent);
        ChangesAtEqualLevel matching = new ChangesAtEqualLevel(repeatability);
        List<Item> items = new ArrayList<>();
        List<LevelMatchedHarmonic> matched = new ArrayList<>();
        for (StateAtCondition a : catalogue.of(from)) {
            Optional<StateAtCondition> b = catalogue.at(to, a.condition());
            if (b.isPresent() && !a.sharesExport(b.get())) {
                items.addAll(builder.of(a, b.get()));
                matched.addAll(matching.of(a, b.get()));
            }
        }
        captures.forEach(source -> items.addAll(source.of(from, to, intent)));
        boolean captured = !items.isEmpty();
        items.addAll(readings.of(from, to, intent));
        List<ItemQuantity> judged = items.stream()
                .filter(Item::judged)
                .map(Item::quantity)
                .distinct()
                .toList();
        return new Comparison(
                from,
                to,
                intent,
                verdict(items, intent, captured),
                captured ? Optional.empty() : Optional.of(reason(from, to, intent)),
                judged,
                notExamined(from, to, items),
                items,
                matched,
                new EquivalentGains(catalogue, repeatability).of(from, to));
    }

    /** The verdict; rails alone can fail a comparison, but cannot pass one of which nothing was captured. */
    private static Decision verdict(List<Item> items, Intent intent, boolean captured) {
        if (intent == Intent.DESCRIBED) {
            return Decision.DESCRIBED;
        }
        if (!captured) {
            return items.stream().anyMatch(i -> i.decision() == Decision.FAIL) ? Decision.FAIL : Decision.UNDECIDED;
        }
        for (Decision d : new Decision[] {Decision.FAIL, Decision.UNDECIDED, Decision.PASS}) {
            if (items.stream().anyMatch(i -> i.decision() == d)) {
                return d;
            }
        }
        return Decision.DESCRIBED;
    }

    private Reason reason(String from, String to, Intent intent) {
        boolean shared = catalogue.of(from).stream()
                .anyMatch(a ->
                        catalogue.at(to, a.condition()).filter(a::sharesExport).isPresent());
        Reason why = new NoPair(job.sheet(), from, to).notCommon(shared, ComparisonReason.NO_COMMON_CONDITION);
        return intent == Intent.UNCHANGED ? Reason.of(FrameReason.NOTHING_SAYS_UNCHANGED, Argument.inner(why)) : why;
    }

    private List<NotExamined> notExamined(String from, String to, List<Item> items) {
        List<NotExamined> missing = new ArrayList<>();
        for (ItemQuantity q : ItemQuantity.values()) {
            if (items.stream().noneMatch(i -> i.quantity() == q)) {
                missing.add(new NotExamined(q, whyNot(q, from, to)));
            }
        }
        return missing;
    }

    private Reason whyNot(ItemQuantity quantity, String from, String to) {
        return Stream.concat(captures.stream(), Stream.of(readings))
                .flatMap(source -> source.whyNot(quantity, from, to).stream())
                .findFirst()
                .orElseGet(() -> whyNotOfWaves(quantity));
    }

    private static Reason whyNotOfWaves(ItemQuantity quantity) {
        return switch (quantity) {
            case GAIN, POLARITY -> Reason.of(ComparisonReason.NO_COMMON_INPUT);
            default -> Reason.of(ComparisonReason.NO_COMMON_WAVEFORM);
        };
    }
}
