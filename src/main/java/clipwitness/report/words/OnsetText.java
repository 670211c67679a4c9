package clipwitness.report.words;

import clipwitness.compare.finding.EqualGain;
import clipwitness.compare.finding.Onset;
import clipwitness.compare.finding.OtherHalves;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Where distortion begins over the gain control, in words. */
final class OnsetText {
    /** Ends the name of a sentence for two states with the same number. */
    private static final String FIGURE = ".figure";

    /** Ends the name of the sentence for two places that are known too roughly to be told as one. */
    private static final String ROUGH = ".rough";

    private final JobWording wording;

    OnsetText(JobWording wording) {
        this.wording = wording;
    }

    String of(Onset onset) {
        return onset.halves().map(h -> halves(onset, h)).orElseGet(() -> plain(onset));
    }

    private String plain(Onset onset) {
        boolean alike = onset.kind() == Onset.Kind.SAME && text(onset.from()).equals(text(onset.to()));
        return said(onset.kind().code() + (alike ? FIGURE : ""), onset);
    }

    private String halves(Onset onset, OtherHalves halves) {
        boolean alike = text(onset.from()).equals(text(onset.to()));
        return said(
                onset.isOnePlace() ? "halves" + (alike ? FIGURE : "") : "halves" + ROUGH,
                onset,
                "condition",
                wording.condition(halves.condition()),
                "halves",
                wording.list(halves.halves().stream().map(this::half).toList()));
    }

    private String half(OtherHalves.Half half) {
        return wording.say(
                half.onset().isRise() ? "finding.onset.half.later" : "finding.onset.half.earlier",
                "half",
                wording.say(half.upper() ? "half.upper" : "half.lower"),
                "now",
                volts(half.onset().now()),
                "before",
                volts(half.onset().before()));
    }

    private String said(String key, Onset onset, String... more) {
        List<String> holes = new ArrayList<>(List.of(
                "from",
                wording.called(onset.subject().earlier()),
                "to",
                wording.called(onset.subject().later()),
                "mark",
                wording.percent(onset.markPercent()),
                "fromGain",
                text(onset.from()),
                "toGain",
                text(onset.to())));
        holes.addAll(List.of(more));
        return wording.say("finding.onset." + key, holes.toArray(String[]::new));
    }

    /** The setting of equal distortion. */
    String of(EqualGain equal) {
        return wording.say(
                "finding.equal",
                "from",
                wording.called(equal.subject().earlier()),
                "to",
                wording.called(equal.subject().later()),
                "fromGain",
                wording.speech().gain(equal.fromGainPercent()),
                "toGain",
                wording.rotation(equal.toGainPercent()).full());
    }

    private String text(Measured gain) {
        return gain.value().isPresent() ? wording.numbers().fixed(gain.value().getAsDouble(), Unit.PERCENT, 0) : "";
    }

    private String volts(Measured.Value onset) {
        return wording.numbers().rounded(onset.number(), onset.unit(), 2);
    }
}
