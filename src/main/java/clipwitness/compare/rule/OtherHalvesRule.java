package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.OtherHalves;
import clipwitness.compare.finding.Significance;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Decibels;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which half of the wave begins to clip elsewhere, at the setting where it differs most: two halves that go opposite ways can leave the
 * distortion where it was. Inputs closer together than a listener hears a level change begin alike.
 */
final class OtherHalvesRule {
    private final StateValues values;

    OtherHalvesRule(StateValues values) {
        this.values = values;
    }

    private record Place(Condition condition, OtherHalves.Half half) {
        double decibels() {
            double ratio = half.onset().now().number() / half.onset().before().number();
            return Math.abs(Decibels.ofAmplitude(ratio));
        }

        boolean isElsewhere() {
            Difference onset = half.onset();
            return !onset.bounded()
                    && Significance.exceedsAsOneOfMany(onset.change(), onset.uncertainty())
                    && decibels() > CommonPractice.HEARD_DECIBELS;
        }
    }

    /**
     * The halves that differ; empty where both begin alike everywhere.
     *
     * @param everything the condition but the gain
     */
    Optional<OtherHalves> of(Comparison comparison, Condition everything) {
        List<Place> elsewhere = Items.conditionsOfWaves(comparison).stream()
                .distinct()
                .filter(c -> c.withoutGain().equals(everything))
                .flatMap(c -> Stream.concat(
                        half(comparison, c, true, WaveformQuantity.ONSET_UP),
                        half(comparison, c, false, WaveformQuantity.ONSET_DOWN)))
                .filter(Place::isElsewhere)
                .toList();
        return elsewhere.stream()
                .max(Comparator.comparingDouble(Place::decibels))
                .map(Place::condition)
                .map(c -> new OtherHalves(
                        c,
                        elsewhere.stream()
                                .filter(p -> p.condition().equals(c))
                                .map(Place::half)
                                .toList()));
    }

    private Stream<Place> half(Comparison comparison, Condition condition, boolean upper, WaveformQuantity quantity) {
        return values.difference(comparison, condition, quantity).stream()
                .map(d -> new Place(condition, new OtherHalves.Half(upper, d)));
    }
}
