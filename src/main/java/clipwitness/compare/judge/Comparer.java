package clipwitness.compare.judge;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.NotExamined;
import clipwitness.job.CaptureKind;
import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the comparisons that the job sheet asks for. */
public final class Comparer {
    private final Job job;
    private final Catalogue catalogue;
    private final Repeatability repeatability;

    public Comparer(Job job, Catalogue catalogue, Repeatability repeatability) {
        this.job = job;
        this.catalogue = catalogue;
        this.repeatability = repeatability;
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
        List<ItemQuantity> judged = items.stream()
                .filter(Item::judged)
                .map(Item::quantity)
                .distinct()
                .toList();
        return new Comparison(
                from,
                to,
                intent,
                verdict(items, intent),
                reason(from, to, items, intent),
                judged,
                notExamined(from, to, items),
                items,
                matched,
                new EquivalentGains(catalogue, repeatability).of(from, to));
    }

    private static Decision verdict(List<Item> items, Intent intent) {
        if (intent == Intent.DESCRIBED) {
            return Decision.DESCRIBED;
        }
        if (items.isEmpty()) {
            return Decision.UNDECIDED;
        }
        for (Decision d : new Decision[] {Decision.FAIL, Decision.UNDECIDED, Decision.PASS}) {
            if (items.stream().anyMatch(i -> i.decision() == d)) {
                return d;
            }
        }
        return Decision.DESCRIBED;
    }

    private Optional<String> reason(String from, String to, List<Item> items, Intent intent) {
        if (!items.isEmpty()) {
            return Optional.empty();
        }
        boolean shared = catalogue.of(from).stream()
                .anyMatch(a ->
                        catalogue.at(to, a.condition()).filter(a::sharesExport).isPresent());
        String why = shared
                ? "one export, byte for byte, stands for " + label(from) + " and " + label(to)
                : "there is no waveform capture of " + label(from) + " and " + label(to)
                        + " under the same gain, frequency, level and setting";
        return Optional.of(intent == Intent.UNCHANGED ? why + ", so nothing says whether it is unchanged" : why);
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

    private String whyNot(ItemQuantity quantity, String from, String to) {
        return switch (quantity) {
            case NOISE, HUM -> captured(CaptureKind.NOISE, from, to);
            case RESPONSE -> captured(CaptureKind.RESPONSE, from, to);
            case RAIL ->
                job.sheet().rails().isEmpty()
                        ? "the sheet has no meter readings"
                        : "this version prints meter readings but does not judge them";
            case GAIN, POLARITY -> "no input channel was captured in both states";
            default -> "no waveform capture under a condition that both states share";
        };
    }

    private String captured(CaptureKind kind, String from, String to) {
        for (String state : new String[] {from, to}) {
            if (job.captures().stream()
                    .noneMatch(r -> r.kind() == kind && r.state().equals(Optional.of(state)))) {
                return "no " + kind.code() + " capture of " + label(state);
            }
        }
        return "this version lists " + kind.code() + " captures but does not measure them";
    }

    private String label(String state) {
        return "“" + job.sheet().label(state) + "”";
    }
}
