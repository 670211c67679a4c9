package clipwitness.report.build;

import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.report.model.ListedDecision;
import clipwitness.report.words.AlignedNumbers;
import clipwitness.report.words.Amount;
import clipwitness.report.words.ItemText;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Decisions item by item. */
final class DecisionBuilder {
    private static final double CERTAIN = 0.999;
    private static final double NEGLIGIBLE = 0.01;

    private final JobWording wording;
    private final ItemText texts;

    DecisionBuilder(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    /** The decisions about one quantity, decimal marks under one another. */
    List<ListedDecision> of(List<Item> items) {
        List<Amount> amounts = items.stream().map(texts::listed).toList();
        List<String> changes =
                AlignedNumbers.align(amounts.stream().map(Amount::number).toList());
        List<String> uncertainties =
                AlignedNumbers.align(amounts.stream().map(Amount::uncertainty).toList());
        List<ListedDecision> decisions = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            decisions.add(decision(
                    items.get(i),
                    changes.get(i),
                    uncertainties.get(i),
                    amounts.get(i).unit()));
        }
        return decisions;
    }

    private ListedDecision decision(Item item, String change, String uncertainty, String unit) {
        return new ListedDecision(
                place(item),
                change,
                uncertainty,
                unit,
                item.judged() ? texts.limit(item) : "",
                probability(item),
                item.decision().code(),
                Signs.of(item.decision()),
                wording.decision(item.decision()),
                budget(item),
                shares(item),
                wording.speech()
                        .text(item.remedy())
                        .orElseGet(() -> wording.reason(item.change().reason())));
    }

    /** Where the item is; of a reading that is judged against what the sheet expects, that too. */
    private String place(Item item) {
        boolean expected = item.subject()
                .filter(s -> s.against() == ItemSubject.Against.EXPECTATION)
                .isPresent();
        return expected ? wording.say("decision.from-expectation", "what", wording.place(item)) : wording.place(item);
    }

    private String probability(Item item) {
        if (item.conformanceProbability().isEmpty()) {
            return "";
        }
        double probability = item.conformanceProbability().getAsDouble();
        if (probability > CERTAIN) {
            return "> " + percent(CERTAIN);
        }
        if (probability < 1 - CERTAIN) {
            return "< " + percent(1 - CERTAIN);
        }
        return percent(probability);
    }

    private String percent(double probability) {
        return wording.numbers().fixed(100 * probability, Unit.PERCENT, 1);
    }

    private String budget(Item item) {
        return contributions(item).stream().map(this::part).collect(Collectors.joining(", "));
    }

    /** The contributions that count, the largest first: one below a hundredth of the sum of squares changes the sum by less than half a percent. */
    private static List<Contribution> contributions(Item item) {
        List<Contribution> all =
                item.change().asValue().map(Measured.Value::largestFirst).orElse(List.of());
        double variance = all.stream().mapToDouble(DecisionBuilder::variance).sum();
        return all.stream().filter(c -> variance(c) > NEGLIGIBLE * variance).toList();
    }

    /** Shares of the sum of squares, in whole percent; divided first, so that one alone has all of it, whatever the rounding. */
    private static List<ListedDecision.Share> shares(Item item) {
        List<Contribution> parts = contributions(item);
        double variance = parts.stream().mapToDouble(DecisionBuilder::variance).sum();
        List<ListedDecision.Share> shares = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            long percent = (long) Math.floor(100 * (variance(parts.get(i)) / variance));
            if (percent > 0) {
                shares.add(new ListedDecision.Share(Integer.toString(i + 1), Long.toString(percent)));
            }
        }
        return shares;
    }

    private static double variance(Contribution part) {
        return part.standardUncertainty() * part.standardUncertainty();
    }

    private String part(Contribution part) {
        return wording.say("source." + part.source().code())
                + "\u00A0"
                + wording.numbers().rounded(part.standardUncertainty(), Unit.ONE, 2);
    }
}
