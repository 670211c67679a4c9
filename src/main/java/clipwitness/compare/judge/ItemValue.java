package clipwitness.compare.judge;

import clipwitness.compare.result.ItemQuantity;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.Optional;

/**
 * A figure of one capture in the unit in which two states are compared, so that the change is a difference. The instrument's vertical
 * accuracy is common to captures at one scale and is left out of it.
 */
public enum ItemValue {
    /** Level of the rms over 1 V, dB. */
    LEVEL(ItemQuantity.LEVEL, WaveformQuantity.RMS, Word.RMS),
    /** Level of the distortion over 1 %, dB. */
    THD(ItemQuantity.THD, WaveformQuantity.THD, Word.THD),
    /** Asymmetry, points. */
    ASYMMETRY(ItemQuantity.ASYMMETRY, WaveformQuantity.ASYMMETRY),
    /** Crest factor, dB. */
    CREST_FACTOR(ItemQuantity.CREST_FACTOR, WaveformQuantity.CREST_FACTOR, Word.CREST_FACTOR),
    /** Gain at the fundamental, dB. */
    GAIN(ItemQuantity.GAIN, WaveformQuantity.GAIN),
    /** Phase at the fundamental, degrees. */
    POLARITY(ItemQuantity.POLARITY, WaveformQuantity.PHASE);

    private final ItemQuantity item;
    private final WaveformQuantity quantity;
    private final Optional<Word> ofLevel;

    /** A figure that is compared as it is. */
    ItemValue(ItemQuantity item, WaveformQuantity quantity) {
        this.item = item;
        this.quantity = quantity;
        this.ofLevel = Optional.empty();
    }

    /** A figure that is compared as a level in dB, and what it is called where it is zero. */
    ItemValue(ItemQuantity item, WaveformQuantity quantity, Word word) {
        this.item = item;
        this.quantity = quantity;
        this.ofLevel = Optional.of(word);
    }

    public ItemQuantity item() {
        return item;
    }

    /** The figure of a capture in the item's unit, its budget carried along to first order. */
    Measured of(WaveformResult capture) {
        Measured raw = capture.get(quantity);
        Optional<Measured.Value> value = raw.asValue().map(v -> v.without(Source.VERTICAL_ACCURACY));
        if (value.isEmpty()) {
            return Measured.refused(item.unit(), raw.reason().orElseThrow());
        }
        return ofLevel.map(word -> decibels(value.get(), word))
                .orElseGet(() -> inUnit(value.get(), 1, value.get().number()));
    }

    private Measured decibels(Measured.Value v, Word word) {
        // A figure that noise bounds stands at its standard uncertainty at least: there its level is as uncertain as a
        // level can be.
        double amplitude = Math.max(v.number(), v.standardUncertainty());
        if (!(amplitude > 0)) {
            return Measured.refused(item.unit(), Reason.of(FigureReason.LEVEL_OF_ZERO, Argument.word(word)));
        }
        return inUnit(v, Decibels.PER_RELATIVE_AMPLITUDE / amplitude, Decibels.ofAmplitude(amplitude));
    }

    private Measured.Value inUnit(Measured.Value v, double sensitivity, double number) {
        return new Measured.Value(
                number,
                item.unit(),
                v.budget().stream().map(c -> c.times(sensitivity)).toList(),
                v.isUpperBound());
    }

    /** Difference of two figures of this kind; degrees are brought into -180 to 180. */
    public double difference(double to, double from) {
        return item.unit() == Unit.DEGREE ? Math.IEEEremainder(to - from, 360) : to - from;
    }
}
