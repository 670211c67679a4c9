package clipwitness.report.words;

import clipwitness.compare.finding.Asymmetric;
import clipwitness.compare.finding.EvenHarmonics;
import clipwitness.compare.finding.Significance;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;

/** Whether the two halves of the wave are clipped alike, and what the even harmonics do, in words. */
final class AsymmetricText {
    private final JobWording wording;
    private final ItemText texts;

    AsymmetricText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    String of(Asymmetric finding) {
        boolean clip = finding.quantity() == WaveformQuantity.CLIP_ASYMMETRY;
        return wording.say(
                switch (finding.kind()) {
                    case ALIKE -> "finding.symmetry";
                    case EVENER -> "finding.evener";
                    case UNLIKE -> "finding.asymmetry";
                },
                "to",
                wording.called(finding.subject().later()),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())),
                "which",
                wording.say(clip ? "which.clip" : "which.peaks"),
                "now",
                percent(finding.asymmetry().now()),
                "before",
                percent(finding.asymmetry().before()));
    }

    /** One that its uncertainty reaches is told by what its size lies below. */
    private String percent(Measured.Value asymmetry) {
        double uncertainty = asymmetry.expanded();
        return Significance.of(asymmetry)
                ? texts.round(asymmetry.number(), uncertainty, Unit.PERCENT)
                : wording.say(
                        "amount.below",
                        "amount",
                        wording.numbers()
                                .atMost(
                                        Math.abs(asymmetry.number()) + uncertainty,
                                        Unit.PERCENT,
                                        NumberText.decimals(uncertainty, 1)));
    }

    String of(EvenHarmonics finding) {
        return wording.say(
                finding.change().isRise() ? "finding.even.more" : "finding.even.less",
                "change",
                texts.size(finding.change(), Unit.DECIBEL));
    }
}
