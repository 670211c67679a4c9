package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.Optional;

/**
 * How unlike the halves of one wave are: logarithms of upper over lower.
 *
 * @param peaks  ln(peakUp / peakDown), about the mean
 * @param clips  ln(clipUp / clipDown), about the output where the input crosses its mean; empty where the output does not follow the input
 *               at each instant, or no input was captured
 * @param up     share of the period near the upper peak, percent
 * @param down   share of the period near the lower peak, percent
 */
record Halves(double peaks, Optional<Ratio> clips, double up, double down) {
    /**
     * A logarithm of a ratio.
     *
     * @param value    its value
     * @param expanded its expanded uncertainty
     */
    record Ratio(double value, double expanded) {
        static Optional<Ratio> of(StateAtCondition setting, WaveformQuantity over, WaveformQuantity under) {
            Optional<Measured.Value> a = above0(setting.figure(over));
            Optional<Measured.Value> b = above0(setting.figure(under));
            return a.isPresent() && b.isPresent()
                    ? Optional.of(new Ratio(
                            Math.log(a.get().number() / b.get().number()),
                            2
                                    * Math.hypot(
                                            a.get().relativeUncertainty(),
                                            b.get().relativeUncertainty())))
                    : Optional.empty();
        }

        private static Optional<Measured.Value> above0(Measured figure) {
            return figure.asValue().filter(v -> v.number() > 0);
        }

        /** How far it lies from another on a half's side at least, the uncertainty of both taken off. */
        double beyond(Ratio other, Half half) {
            double difference = half == Half.UPPER ? value - other.value : other.value - value;
            return difference - Math.hypot(expanded, other.expanded);
        }
    }

    /** The halves of a setting whose wave was measured. */
    static Optional<Halves> of(StateAtCondition setting) {
        Optional<Ratio> peaks = Ratio.of(setting, WaveformQuantity.PEAK_UP, WaveformQuantity.PEAK_DOWN);
        Measured up = setting.figure(Half.UPPER.dwell());
        Measured down = setting.figure(Half.LOWER.dwell());
        return peaks.isPresent() && up.value().isPresent() && down.value().isPresent()
                ? Optional.of(new Halves(
                        peaks.get().value(),
                        Ratio.of(setting, WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN),
                        up.value().getAsDouble(),
                        down.value().getAsDouble()))
                : Optional.empty();
    }

    /** Share of the period near the peak of a half, percent. */
    double dwell(Half half) {
        return half == Half.UPPER ? up : down;
    }
}
