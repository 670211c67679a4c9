package clipwitness.report.words;

import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Deciding;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Settings;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.rule.DecidingRule;
import clipwitness.compare.rule.DiffersRule;
import clipwitness.compare.rule.Findings;
import clipwitness.compare.rule.OtherDriveRule;
import clipwitness.compare.rule.SpokenCondition;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the first page says of a comparison: two to five words, a sentence, and what else did not pass. */
public final class VerdictText {
    private final JobWording wording;
    private final Findings found;
    private final FindingText findings;
    private final ItemText texts;
    private final DriveText drives;
    private final OtherDriveRule drive;
    private final DecidingRule deciding;

    /** Sentences in a wording. */
    public VerdictText(JobWording wording) {
        this(wording, Findings.of(wording.results()));
    }

    /**
     * Sentences in a wording.
     *
     * @param found the findings of the same results
     */
    public VerdictText(JobWording wording, Findings found) {
        this.wording = wording;
        this.found = found;
        this.findings = new FindingText(wording);
        this.texts = new ItemText(wording);
        this.drives = new DriveText(wording);
        this.drive = new OtherDriveRule(wording.results());
        this.deciding = new DecidingRule(wording.results());
    }

    /** What it comes to, in two to five words: {@code Unharmed}; of a state that was to change what became of its sound. */
    public String lead(Comparison comparison) {
        return switch (comparison.verdict()) {
            case FAIL -> wording.say("verdict.lead.fail." + comparison.intent().code());
            case UNDECIDED ->
                wording.say(isForGood(comparison) ? "verdict.lead.undecided.remains" : "verdict.lead.undecided");
            case PASS, DESCRIBED ->
                comparison.intent() == Intent.UNCHANGED ? unchangedLead(comparison) : differingLead(comparison);
        };
    }

    private boolean isForGood(Comparison comparison) {
        return deciding.of(comparison).filter(Deciding::forGood).isPresent();
    }

    private String unchangedLead(Comparison comparison) {
        if (comparison.verdict() == Decision.DESCRIBED) {
            return wording.say("verdict.lead.none");
        }
        boolean sound = comparison.judged().stream().anyMatch(ItemQuantity::isOfWaves);
        return wording.say(sound ? "verdict.lead.pass" : "verdict.lead.pass.part");
    }

    private String differingLead(Comparison comparison) {
        return answer(comparison)
                .flatMap(findings::lead)
                .orElseGet(() -> wording.say(
                        DiffersRule.any(comparison) ? "verdict.lead.differs" : "verdict.lead." + compared(comparison)));
    }

    /** How much was compared: without the waves nothing can be said of a difference in the sound. */
    private static String compared(Comparison comparison) {
        if (comparison.items().isEmpty()) {
            return "nothing";
        }
        return comparison.items().stream().anyMatch(i -> i.quantity().isOfWaves()) ? "same" : "part";
    }

    /** The answer about a comparison. */
    private Optional<Finding> answer(Comparison comparison) {
        return found.all().stream()
                .filter(Answer.class::isInstance)
                .filter(f -> f.subject().from().equals(Optional.of(comparison.from()))
                        && f.subject().to().equals(Optional.of(comparison.to())))
                .findFirst();
    }

    /** Whether a comparison is told together with an earlier one about the same state. */
    public boolean isToldBefore(Comparison comparison) {
        return answer(comparison)
                .filter(f ->
                        paragraphs().stream().noneMatch(p -> p.findings().get(0).equals(f)))
                .isPresent();
    }

    private List<Paragraph> paragraphs() {
        return found.paragraphs();
    }

    /** The sentences. */
    public String sentence(Comparison comparison) {
        if (comparison.items().isEmpty()) {
            return wording.say("verdict.nothing", "reason", wording.reason(comparison.reason()));
        }
        return switch (comparison.verdict()) {
            case FAIL, UNDECIDED ->
                deciding.of(comparison).flatMap(findings::body).orElseGet(() -> noneJudged(comparison));
            case PASS, DESCRIBED ->
                comparison.intent() == Intent.UNCHANGED ? unchanged(comparison) : differing(comparison);
        };
    }

    private String noneJudged(Comparison comparison) {
        return comparison.judged().isEmpty()
                ? wording.say("verdict.unchanged.none", "reason", wording.reason(comparison.reason()))
                : wording.say(
                        "verdict.unchanged.part",
                        "judged",
                        judged(comparison),
                        "reason",
                        wording.reason(comparison.reason()));
    }

    private String unchanged(Comparison comparison) {
        if (comparison.verdict() == Decision.DESCRIBED) {
            return noneJudged(comparison);
        }
        int passed = Items.decided(comparison, Decision.PASS).size();
        List<Item> levels = Items.judged(comparison, ItemQuantity.LEVEL);
        if (levels.isEmpty()) {
            return wording.say("verdict.unchanged.pass.plain", "items", wording.items(passed));
        }
        int further = passed - levels.size();
        return wording.say(
                further > 0 ? "verdict.unchanged.pass" : "verdict.unchanged.pass.single",
                "settings",
                texts.settings(Settings.of(levels, levels, comparison)),
                "level",
                texts.within(Items.farthest(levels)),
                "limit",
                texts.limit(levels.get(0)),
                "items",
                wording.counted("items.further", further));
    }

    /** What became of the sound; where no answer says it, what differs. */
    private String differing(Comparison comparison) {
        return told(comparison)
                .orElseGet(() -> wording.say(
                        DiffersRule.any(comparison) ? "verdict.differs" : "verdict.differs.none",
                        "what",
                        new DiffersText(wording).what(DiffersRule.of(comparison))));
    }

    /** The answer, with what is told behind it about the same state. */
    private Optional<String> told(Comparison comparison) {
        return answer(comparison)
                .map(f -> paragraphs().stream()
                        .filter(p -> p.findings().get(0).equals(f))
                        .findFirst()
                        .map(findings::body)
                        .orElseGet(() -> behind(f)));
    }

    /** An answer under its own heading that another one about the same state precedes. */
    private String behind(Finding answer) {
        return paragraphs().stream()
                .filter(p -> answer instanceof Answer a
                        && a.place() == Answer.Place.REPEATS
                        && p.findings().contains(answer))
                .findFirst()
                .map(p -> p.findings().get(0).subject().earlier())
                .map(first -> wording.say("answer.repeats.apart", "from", wording.called(first)))
                .orElseGet(() -> findings.body(answer).orElseThrow());
    }

    /** What else did not pass, what would decide it, and of a state that was to change what must not change and did not. */
    public List<String> more(Comparison comparison) {
        List<String> more = new ArrayList<>();
        boolean judgedSound = comparison.verdict() == Decision.FAIL || comparison.verdict() == Decision.UNDECIDED;
        if (comparison.intent() == Intent.CHANGED && judgedSound) {
            told(comparison).ifPresent(more::add);
        }
        others(comparison, more);
        if (comparison.intent() == Intent.CHANGED && comparison.verdict() == Decision.PASS) {
            more.add(wording.say("verdict.changed.kept", "judged", judged(comparison)));
        }
        if (comparison.intent() == Intent.UNCHANGED || answer(comparison).isEmpty()) {
            SpokenCondition.of(comparison)
                    .flatMap(condition -> drive.of(comparison, condition))
                    .map(drives::of)
                    .ifPresent(more::add);
        }
        return more;
    }

    private void others(Comparison comparison, List<String> more) {
        int judged = (int) comparison.items().stream().filter(Item::judged).count();
        int passed = Items.decided(comparison, Decision.PASS).size();
        if (comparison.verdict() == Decision.UNDECIDED && passed > 1) {
            more.add(wording.say("verdict.more.pass", "items", wording.items(passed, judged)));
        }
        for (Decision decision : List.of(Decision.FAIL, Decision.UNDECIDED)) {
            List<Item> items = Items.decided(comparison, decision);
            if (items.size() > 1 || (items.size() == 1 && decision != comparison.verdict())) {
                more.add(wording.say(
                        "verdict.more." + decision.code(),
                        "items",
                        wording.items(items.size(), judged),
                        "list",
                        texts.listed(items)));
            }
        }
        if (comparison.verdict() == Decision.UNDECIDED) {
            Items.neediest(comparison)
                    .flatMap(Item::remedy)
                    .map(wording.speech()::text)
                    .ifPresent(more::add);
        }
    }

    private String judged(Comparison comparison) {
        return wording.list(comparison.judged().stream().map(wording::quantity).toList());
    }
}
