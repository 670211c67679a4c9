package clipwitness.compare.judge;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A figure of one capture in the unit in which two states are compared, so that the change is a difference. The instrument's vertical
 * accuracy is common to captures at one scale and is left out of it.
 *
 * @param quantity the figure; its row says as what it is compared, and whether as a level in dB
 */
public record ItemValue(WaveformQuantity quantity) {
    /** Level of the rms over 1 V, dB. */
    public static final ItemValue LEVEL = new ItemValue(WaveformQuantity.RMS);

    /** Level of the distortion over 1 %, dB. */
    public static final ItemValue THD = new ItemValue(WaveformQuantity.THD);

    /** Gain at the fundamental, dB. */
    public static final ItemValue GAIN = new ItemValue(WaveformQuantity.GAIN);

    /** Phase at the fundamental, degrees. */
    public static final ItemValue POLARITY = new ItemValue(WaveformQuantity.PHASE);

    private static final List<ItemValue> ALL = Arrays.stream(WaveformQuantity.values())
            .filter(q -> q.item().isPresent())
            .map(ItemValue::new)
            .sorted(Comparator.comparing(ItemValue::item))
            .toList();

    /** Refuses a figure whose row names no change. */
    public ItemValue {
        if (quantity.item().isEmpty()) {
            throw new IllegalArgumentException(quantity + " is not compared");
        }
    }

    /** All figures by which two states are compared, in the order of the items. */
    public static List<ItemValue> all() {
        return ALL;
    }

    /** The change that it gives. */
    public ItemQuantity item() {
        return quantity.item().orElseThrow();
    }

    /** Whether it is the level of something that may be lost in noise, as distortion may. */
    boolean isLevelOfResidue() {
        return quantity.isResidue() && quantity.ofLevel().isPresent();
    }

    /** The figure of a capture in the item's unit, its budget carried along to first order. */
    Measured of(WaveformResult capture) {
        Measured raw = capture.get(quantity);
        Optional<Measured.Value> value = raw.asValue().map(v -> v.without(Source.VERTICAL_ACCURACY));
        if (value.isEmpty()) {
            return Measured.refused(item().unit(), raw.reason().orElseThrow());
        }
        return quantity.ofLevel()
                .map(word -> decibels(value.get(), word))
                .orElseGet(() -> inUnit(value.get(), 1, value.get().number()));
    }

    private Measured decibels(Measured.Value v, Word word) {
        // A figure that noise bounds stands at its standard uncertainty at least: there its level is as uncertain as a
        // level can be.
        double amplitude = Math.max(v.number(), v.standardUncertainty());
        if (!(amplitude > 0)) {
            return Measured.refused(item().unit(), Reason.of(FigureReason.LEVEL_OF_ZERO, Argument.word(word)));
        }
        return inUnit(v, Decibels.PER_RELATIVE_AMPLITUDE / amplitude, Decibels.ofAmplitude(amplitude));
    }

    private Measured.Value inUnit(Measured.Value v, double sensitivity, double number) {
        return new Measured.Value(
                number,
                item().unit(),
                v.budget().stream().map(c -> c.times(sensitivity)).toList(),
                v.isUpperBound());
    }

    /** Difference of two figures of this kind; degrees are brought into -180 to 180. */
    public double difference(double to, double from) {
        return item().unit() == Unit.DEGREE ? Math.IEEEremainder(to - from, 360) : to - from;
    }
}
