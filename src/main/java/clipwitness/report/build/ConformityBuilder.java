package clipwitness.report.build;

import clipwitness.compare.finding.Items;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.job.Limits;
import clipwitness.quantity.ItemQuantity;
import clipwitness.report.model.ConformityPart;
import clipwitness.report.words.ItemText;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The statement of conformity: what was judged, by which limits, by which rule. */
final class ConformityBuilder {
    private final JobWording wording;
    private final ItemText texts;

    ConformityBuilder(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    ConformityPart of(JobResults results) {
        List<String> statements = new ArrayList<>();
        Set<ItemQuantity> judged = new TreeSet<>();
        for (Comparison comparison : results.comparisons()) {
            statements.add(statement(comparison));
            judged.addAll(comparison.judged());
        }
        Limits limits = results.job().sheet().limits();
        List<ConformityPart.LimitText> limitTexts = judged.stream()
                .flatMap(q -> q.limit().isPresent() ? limits(q, limits, results) : fixed(q, results).stream())
                .toList();
        return new ConformityPart(statements, limitTexts, rule(results));
    }

    private String statement(Comparison comparison) {
        String from = wording.called(comparison.from());
        String to = wording.called(comparison.to());
        if (comparison.verdict() == Decision.DESCRIBED) {
            return wording.say("conformity.described", "to", to, "from", from);
        }
        if (comparison.judged().isEmpty()) {
            return wording.say(
                    "conformity.nothing",
                    "to",
                    to,
                    "from",
                    from,
                    "reason",
                    wording.reason(comparison.reason()),
                    "verdict",
                    wording.decision(comparison.verdict()));
        }
        return wording.say(
                "conformity.judged",
                "to",
                to,
                "from",
                from,
                "quantities",
                wording.list(comparison.judged().stream().map(wording::quantity).toList()),
                "verdict",
                wording.decision(comparison.verdict()));
    }

    /** The limit of a quantity, and those that single rails have of their own. */
    private Stream<ConformityPart.LimitText> limits(ItemQuantity quantity, Limits limits, JobResults results) {
        double usual = limits.of(quantity.limit().orElseThrow());
        Map<String, Item> own = new LinkedHashMap<>();
        boolean some = false;
        for (Comparison comparison : results.comparisons()) {
            for (Item item : Items.judged(comparison, quantity)) {
                boolean other = item.subject().isPresent() && item.limit().orElse(usual) != usual;
                some |= !other;
                if (other) {
                    own.putIfAbsent(wording.place(item), item);
                }
            }
        }
        Stream<ConformityPart.LimitText> ofRails = own.entrySet().stream()
                .map(e -> new ConformityPart.LimitText(
                        e.getKey(), texts.limit(e.getValue()), wording.say("limit.sheet")));
        return some ? Stream.concat(limit(quantity, limits).stream(), ofRails) : ofRails;
    }

    private Optional<ConformityPart.LimitText> limit(ItemQuantity quantity, Limits limits) {
        return quantity.limit()
                .map(limit -> new ConformityPart.LimitText(
                        wording.quantity(quantity),
                        texts.limit(quantity, limits.of(limit)),
                        wording.say(limits.isDefault(limit) ? "limit.default" : "limit.sheet")));
    }

    /** A limit that no sheet sets: half way from in phase to turned over, for instance. */
    private Optional<ConformityPart.LimitText> fixed(ItemQuantity quantity, JobResults results) {
        return results.comparisons().stream()
                .flatMap(c -> c.items().stream())
                .filter(i -> i.quantity() == quantity && i.limit().isPresent())
                .findFirst()
                .map(i -> new ConformityPart.LimitText(
                        wording.quantity(quantity), texts.limit(i), wording.say("limit.method")));
    }

    private List<String> rule(JobResults results) {
        long decisions = results.comparisons().stream()
                .flatMap(c -> c.items().stream())
                .filter(Item::judged)
                .count();
        if (decisions == 0) {
            return List.of(wording.say("limit.none"));
        }
        return List.of(
                wording.say("conformity.rule"),
                wording.say("conformity.rule.verdict"),
                decisions == 1
                        ? wording.say("conformity.rule.one")
                        : wording.say("conformity.rule.single", "count", Long.toString(decisions)));
    }
}
