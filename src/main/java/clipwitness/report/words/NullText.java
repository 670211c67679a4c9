package clipwitness.report.words;

import clipwitness.compare.finding.Items;
import clipwitness.compare.result.Item;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;

/** Null depths in words. A null of −38 dB leaves 10^(−38/20) = 1.3 % of the wave's rms. */
final class NullText {
    private final JobWording wording;

    NullText(JobWording wording) {
        this.wording = wording;
    }

    /** What may be left as a share of the wave, rounded up: {@code 0.5 %}. */
    String most(Item item) {
        return wording.numbers().atMost(100 * Decibels.toAmplitude(Items.reach(item)), Unit.PERCENT, 1);
    }

    /** What is left as a share of the wave. */
    String share(Item item) {
        double depth = item.change().value().orElseThrow();
        return wording.numbers().fixed(100 * Decibels.toAmplitude(depth), Unit.PERCENT, decimalsOfShare(item));
    }

    /** What is left as a share of the wave with its uncertainty; where noise or repeatability bounds it, what it is at most. */
    String spread(Item item) {
        if (Items.isBound(item)) {
            return wording.say("amount.most", "amount", most(item));
        }
        double share = 100 * Decibels.toAmplitude(item.change().value().orElseThrow());
        double uncertainty = share * (Decibels.toAmplitude(Items.uncertainty(item)) - 1);
        return new ItemText(wording).spread(share, uncertainty, Unit.PERCENT.symbol());
    }

    /** The limit as a share of the wave; empty where there is none. */
    String limit(Item item) {
        return item.limit().isEmpty()
                ? ""
                : wording.numbers()
                        .fixed(100 * Decibels.toAmplitude(item.limit().getAsDouble()), Unit.PERCENT, 1);
    }

    private static int decimalsOfShare(Item item) {
        double share = 100 * Decibels.toAmplitude(item.change().value().orElseThrow());
        return NumberText.decimals(share * (Decibels.toAmplitude(Items.uncertainty(item)) - 1), 1);
    }
}
