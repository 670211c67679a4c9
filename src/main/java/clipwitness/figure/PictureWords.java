package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Pictured;
import clipwitness.compare.finding.Remainders;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.finding.Telling;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.PicturedRule;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.NumberText;
import java.util.List;
import java.util.Optional;

/** What the pictures of waves say of the compared states, in words. */
public final class PictureWords {
    private static final String AT_EQUAL_LOUDNESS = "When both waves are set equally loud, ";

    private final FigureContext context;

    PictureWords(FigureContext context) {
        this.context = context;
    }

    /** The words for the pictures of a job in English, whatever the language of its report. */
    public static PictureWords english(JobResults results) {
        FigureContext context = FigureContext.of(results, FigureCatalogue.noCondition());
        return new PictureWords(new FigureContext(results, context.palette(), context.main(), NumberText.in("en")));
    }

    /** One finding of a picture in a sentence; empty where the finding is not one of a picture. */
    public Optional<String> of(Finding finding) {
        if (finding instanceof Pictured pictured) {
            String opening =
                    context.conditions().opening(pictured.subject().condition().gainPercent());
            return Optional.of(Sentences.of(opening + ": ", List.of(part(pictured))));
        }
        return finding instanceof Remainders remainders
                ? Optional.of(Sentences.of(AT_EQUAL_LOUDNESS, List.of(part(remainders))))
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
        return parts.isEmpty() ? Optional.empty() : Optional.of(Sentences.of(AT_EQUAL_LOUDNESS, parts));
    }

    private String part(Pictured pictured) {
        Subject subject = pictured.subject();
        return "against %s, %s %s"
                .formatted(
                        context.quoted(subject.earlier()),
                        context.quoted(subject.later()),
                        String.join(
                                " and ",
                                pictured.tellings().stream().map(this::told).toList()));
    }

    private String told(Telling telling) {
        return telling.item().quantity() == ItemQuantity.LEVEL
                ? told(telling, "is %s louder", "is %s quieter", "level")
                : told(telling, "distorts %s more", "distorts %s less", "distortion");
    }

    private String told(Telling telling, String more, String less, String what) {
        return switch (telling.kind()) {
            case MORE -> more.formatted(size(telling.item()));
            case LESS -> less.formatted(size(telling.item()));
            default -> unchanged(telling.item(), what);
        };
    }

    /** A change that does not count: it lies within its uncertainty, or is next to nothing. */
    private String unchanged(Item item, String what) {
        double uncertainty = Items.uncertainty(item);
        boolean within = Items.size(item) <= uncertainty;
        Measured.Value bound = Measured.of(
                within ? uncertainty : Items.size(item) + uncertainty,
                item.change().unit());
        return "shows no change of " + what + (within ? " above its uncertainty of " : " above ")
                + context.values().size(bound);
    }

    private String size(Item item) {
        return context.values().size(item.change().asValue().orElseThrow());
    }

    private String part(Remainders remainders) {
        Item deepest = remainders.deepest();
        Item shallowest = remainders.shallowest();
        String range =
                deepest.equals(shallowest) ? depth(deepest) : "from " + depth(deepest) + " to " + depth(shallowest);
        return "%s less %s leaves %s"
                .formatted(
                        context.quoted(remainders.subject().later()),
                        context.quoted(remainders.subject().earlier()),
                        range);
    }

    private String depth(Item item) {
        String value = context.values().of(item.change().asValue().orElseThrow());
        String at = context.conditions().of(item.condition(), item.condition());
        return at.isEmpty() ? value : value + " at " + at;
    }
}
