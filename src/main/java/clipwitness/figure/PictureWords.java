package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Pictured;
import clipwitness.compare.finding.Remainders;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.finding.Telling;
import clipwitness.compare.finding.Told;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.PicturedRule;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.words.Speech;
import java.util.List;
import java.util.Optional;

/** What the pictures of waves say of the compared states, in words. */
public final class PictureWords {
    /** The least bound that two decimals tell, dB. */
    private static final double LEAST_TOLD = 0.01;

    private final FigureContext context;

    PictureWords(FigureContext context) {
        this.context = context;
    }

    /** The words for the pictures of a job in English, whatever the language of its report. */
    public static PictureWords english(JobResults results) {
        return new PictureWords(FigureContext.of(results, FigureCatalogue.noCondition(), Speech.ENGLISH));
    }

    /** One finding of a picture in a sentence; empty where the finding is not one of a picture. */
    public Optional<String> of(Finding finding) {
        if (finding instanceof Pictured pictured) {
            return Optional.of(context.tell(
                    "figure.cycles.says", pictured.subject().condition().gainPercent(), List.of(part(pictured))));
        }
        return finding instanceof Remainders remainders
                ? Optional.of(equallyLoud(List.of(part(remainders))))
                : Optional.empty();
    }

    /** Level and distortion of each compared state against the state it is compared with, under one condition. */
    List<String> levelAndDistortion(Condition condition) {
        return PicturedRule.changes(context.results(), condition).stream()
                .map(this::part)
                .toList();
    }

    /** What is left at equal loudness, over some conditions; empty where nothing is compared. */
    Optional<String> remainders(List<Condition> conditions) {
        List<String> parts = PicturedRule.remainders(context.results(), conditions).stream()
                .map(this::part)
                .toList();
        return parts.isEmpty() ? Optional.empty() : Optional.of(equallyLoud(parts));
    }

    private String equallyLoud(List<String> parts) {
        return context.say("figure.matched.says", "list", Sentences.parts(parts));
    }

    private String part(Pictured pictured) {
        Subject subject = pictured.subject();
        List<String> told = pictured.tellings().stream().map(this::told).toList();
        return context.say(
                "figure.against",
                "from",
                context.called(subject.earlier()),
                "to",
                context.called(subject.later()),
                "told",
                told.get(0),
                "more",
                String.join("; ", told.subList(1, told.size())));
    }

    private String told(Telling telling) {
        String name = telling.item().quantity() == ItemQuantity.LEVEL ? "figure.told.level." : "figure.told.thd.";
        return switch (telling.kind()) {
            case MORE, LESS -> context.say(name + telling.kind().code(), "change", size(telling.item()));
            default -> unchanged(telling.item(), name);
        };
    }

    /** A change that does not count: it lies within its uncertainty, or is next to nothing. */
    private String unchanged(Item item, String name) {
        double uncertainty = Items.uncertainty(item);
        boolean within = Items.size(item) <= uncertainty;
        double told = within ? uncertainty : Items.size(item) + uncertainty;
        Measured.Value bound =
                Measured.of(Math.max(told, LEAST_TOLD), item.change().unit());
        return context.say(
                name + (within ? "within" : "none"), "bound", context.values().size(bound));
    }

    private String size(Item item) {
        Measured.Value change = item.change().asValue().orElseThrow();
        return Told.isAtLeast(change)
                ? context.say("amount.least", "amount", context.values().least(change))
                : context.values().size(change);
    }

    private String part(Remainders remainders) {
        Item deepest = remainders.deepest();
        Item shallowest = remainders.shallowest();
        boolean one = deepest.equals(shallowest);
        return context.say(
                one ? "figure.leaves" : "figure.leaves.range",
                "to",
                context.called(remainders.subject().later()),
                "from",
                context.called(remainders.subject().earlier()),
                "depth",
                depth(deepest),
                "most",
                depth(shallowest));
    }

    private String depth(Item item) {
        String value = context.values().of(item.change().asValue().orElseThrow());
        String at = context.conditions().of(item.condition(), item.condition());
        return context.say("figure.value.at", "value", value, "condition", at);
    }
}
