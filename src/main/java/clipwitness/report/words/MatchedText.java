package clipwitness.report.words;

import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Matched;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The harmonics above the seventh when both states are set equally loud, in words. */
final class MatchedText {
    /** More harmonics than so many are counted, not listed. */
    private static final int LISTED = 4;

    private final JobWording wording;
    private final ItemText texts;

    MatchedText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    String of(Matched finding) {
        List<String> parts = new ArrayList<>(List.of(high(finding)));
        finding.elsewhere().map(this::elsewhere).ifPresent(parts::add);
        String sentence = end(String.join(", ", parts));
        return finding.against().isEmpty() ? sentence : sentence + " " + end(against(finding.against()));
    }

    private String end(String sentence) {
        return wording.say("finding.matched.end", "sentence", sentence);
    }

    private String high(Matched finding) {
        Difference high = finding.high();
        return wording.say(
                "finding.matched." + finding.kind().code(),
                "lead",
                lead(finding),
                "change",
                high.significant() ? texts.size(high, Unit.DECIBEL) : "",
                "uncertainty",
                texts.round(Math.abs(high.change()) + high.uncertainty(), high.uncertainty(), Unit.DECIBEL));
    }

    private String lead(Matched finding) {
        return wording.say(
                "finding.matched.equal",
                "to",
                wording.called(finding.subject().later()),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())));
    }

    private String elsewhere(Matched.Elsewhere other) {
        return wording.say(
                other.high().isRise() ? "finding.matched.but.higher" : "finding.matched.but.lower",
                "change",
                texts.size(other.high(), Unit.DECIBEL),
                "condition",
                wording.condition(other.condition()));
    }

    private String against(List<LevelMatchedHarmonic> harmonics) {
        Measured.Value most = harmonics.stream()
                .map(h -> h.change().asValue().orElseThrow())
                .max(Comparator.comparingDouble(v -> Math.abs(v.number())))
                .orElseThrow();
        List<String> orders =
                harmonics.stream().map(h -> Integer.toString(h.order())).toList();
        boolean many = orders.size() > LISTED;
        return wording.say(
                "finding.matched.though." + (most.number() > 0 ? "higher" : "lower")
                        + (many ? ".many" : orders.size() == 1 ? ".one" : ""),
                "orders",
                many ? wording.count(orders.size()) : wording.list(orders),
                "change",
                texts.round(Math.abs(most.number()), most.expandedUncertainty().orElse(0), Unit.DECIBEL));
    }
}
