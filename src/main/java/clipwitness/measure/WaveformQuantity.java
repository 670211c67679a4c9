package clipwitness.measure;

import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Word;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The figures of a waveform capture, a row each: {@link #key()} is the name in the results and the end of the name of its word
 * ({@code value.KEY} in words.properties). The rest of a row says how two states are compared and which tables and pictures show the figure.
 * Each measure's own file defines it.
 */
public enum WaveformQuantity {
    /** Refined fundamental frequency. */
    FREQUENCY(figure("frequency", Unit.HERTZ)),
    /** Mean of the fit. */
    MEAN(figure("mean", Unit.VOLT)),
    /** Root mean square of the swing. */
    RMS(figure("rms", Unit.VOLT)
            .inDecibels(ItemQuantity.LEVEL, Word.RMS)
            .firstPage(1)
            .table(1)
            .picture(2, "level", Steps.LOGARITHMIC)),
    /** Peak amplitude of the fundamental. */
    FUNDAMENTAL(figure("fundamental", Unit.VOLT)),
    /** Upper peak of the mean cycle, from the mean. */
    PEAK_UP(figure("peakUp", Unit.VOLT)),
    /** Lower peak of the mean cycle, from the mean, positive. */
    PEAK_DOWN(figure("peakDown", Unit.VOLT)),
    /** Larger peak over rms. */
    CREST_FACTOR(figure("crestFactor", Unit.ONE)
            .inDecibels(ItemQuantity.CREST_FACTOR, Word.CREST_FACTOR)
            .firstPage(5)
            .table(3)
            .picture(4, "crest", Steps.LINEAR)),
    /** Total harmonic distortion over the fundamental. */
    THD(figure("thd", Unit.PERCENT)
            .leftOver()
            .inDecibels(ItemQuantity.THD, Word.THD)
            .firstPage(2)
            .table(2)
            .picture(1, "thd", Steps.LOGARITHMIC)),
    /** Total harmonic distortion over the whole signal. */
    THD_OF_TOTAL(figure("thdOfTotal", Unit.PERCENT).leftOver()),
    /** Distortion and noise. */
    THD_PLUS_NOISE(figure("thdPlusNoise", Unit.PERCENT).leftOver()),
    /** Scatter about the mean cycle, rms. */
    NOISE(figure("noise", Unit.VOLT)),
    /** Difference of the peaks over their sum. */
    ASYMMETRY(figure("asymmetry", Unit.PERCENT)
            .compared(ItemQuantity.ASYMMETRY)
            .table(4)
            .picture(5, "asymmetry", Steps.LINEAR)),
    /** What half-wave symmetry leaves. */
    HALF_WAVE_RESIDUE(figure("halfWaveResidue", Unit.PERCENT).leftOver()),
    /** Even harmonics over the fundamental. */
    EVEN_HARMONICS(figure("evenHarmonics", Unit.DBC).leftOver()),
    /** Odd harmonics over the fundamental. */
    ODD_HARMONICS(figure("oddHarmonics", Unit.DBC).leftOver()),
    /** Harmonics from the eighth up over the fundamental. */
    HIGH_HARMONICS(figure("highHarmonics", Unit.DBC).leftOver().firstPage(3)),
    /** Share of the period near the upper peak. */
    DWELL_UP(figure("dwellUp", Unit.PERCENT)),
    /** Share of the period near the lower peak. */
    DWELL_DOWN(figure("dwellDown", Unit.PERCENT)),
    /** Where the area of the positive half-wave lies. */
    LEAN(figure("lean", Unit.PERCENT).table(7)),
    /** Peak amplitude of the input's fundamental. */
    INPUT_FUNDAMENTAL(transfer("inputFundamental", Unit.VOLT)),
    /** Total harmonic distortion of the input. */
    INPUT_THD(transfer("inputThd", Unit.PERCENT)),
    /** Fundamental over the input's. */
    GAIN(transfer("gain", Unit.DECIBEL).compared(ItemQuantity.GAIN)),
    /** Phase of the output over the input at the fundamental. */
    PHASE(transfer("phase", Unit.DEGREE).compared(ItemQuantity.POLARITY)),
    /** Slope of the transfer curve at its centre. */
    SMALL_SIGNAL_GAIN(transfer("smallSignalGain", Unit.DECIBEL)),
    /** Input at which the output's upper half is 1 dB short. */
    ONSET_UP(transfer("onsetUp", Unit.VOLT).table(5).picture(3, "onset", Steps.LOGARITHMIC)),
    /** Input at which the output's lower half is 1 dB short. */
    ONSET_DOWN(transfer("onsetDown", Unit.VOLT).table(6).picture(3, "onset", Steps.LOGARITHMIC)),
    /** Width of the upper knee. */
    KNEE_UP(transfer("kneeUp", Unit.DECIBEL)),
    /** Width of the lower knee. */
    KNEE_DOWN(transfer("kneeDown", Unit.DECIBEL)),
    /** Upper extreme from the output at the input's mean. */
    CLIP_UP(transfer("clipUp", Unit.VOLT)),
    /** Lower extreme from the output at the input's mean. */
    CLIP_DOWN(transfer("clipDown", Unit.VOLT)),
    /** Difference of the clip levels over their sum. */
    CLIP_ASYMMETRY(transfer("clipAsymmetry", Unit.PERCENT).firstPage(4).picture(6, "clip-asymmetry", Steps.LINEAR)),
    /** Rms difference of rising and falling branch of the transfer curve over the rms of the swing. */
    BRANCH_GAP(transfer("branchGap", Unit.PERCENT).leftOver());

    /** How a figure is drawn over the gain control. */
    public enum Steps {
        /** In equal steps. */
        LINEAR,
        /** In equal ratios, where all that is drawn lies above zero. */
        LOGARITHMIC
    }

    @SuppressWarnings("ImmutableEnumChecker") // a record of strings, enums and optionals of enums and integers
    private final QuantityRow row;

    WaveformQuantity(QuantityRow row) {
        this.row = row;
    }

    private static QuantityRow figure(String key, Unit unit) {
        return QuantityRow.of(key, unit, false);
    }

    private static QuantityRow transfer(String key, Unit unit) {
        return QuantityRow.of(key, unit, true);
    }

    /** Name in the results. */
    public String key() {
        return row.key();
    }

    /** Unit of the figure where the channel is in volts. */
    public Unit unit() {
        return row.unit();
    }

    /** Whether the figure is what the tone leaves of a wave, a {@link Residue}. */
    public boolean isResidue() {
        return row.residue();
    }

    /** Whether the figure needs an input channel. */
    public boolean needsInput() {
        return row.needsInput();
    }

    /** The change of two states that this figure gives, with its limit; empty where it is not compared by itself. */
    public Optional<ItemQuantity> item() {
        return row.item();
    }

    /** For a figure that is compared as a ratio in dB, its name in sentences; empty where it is compared as a difference in its own unit. */
    public Optional<Word> ofLevel() {
        return row.ofLevel();
    }

    /** The figures of the table on the first page, in its order. */
    public static List<WaveformQuantity> onFirstPage() {
        return placed(QuantityRow::firstPage);
    }

    /** The figures with a table over the gain control, in the order of the tables. */
    public static List<WaveformQuantity> tabled() {
        return placed(QuantityRow::table);
    }

    /** The pictures over the gain control in their order: the end of a picture's name, and the figures that it shows. */
    public static Map<String, List<WaveformQuantity>> pictures() {
        return placed(QuantityRow::picture).stream()
                .collect(Collectors.groupingBy(q -> q.row.pictureName(), LinkedHashMap::new, Collectors.toList()));
    }

    /** Whether the picture over the gain control has a logarithmic scale. */
    public boolean logarithmic() {
        return row.scale() == Steps.LOGARITHMIC;
    }

    private static List<WaveformQuantity> placed(Function<QuantityRow, OptionalInt> place) {
        return Arrays.stream(values())
                .filter(q -> place.apply(q.row).isPresent())
                .sorted(Comparator.comparingInt(q -> place.apply(q.row).getAsInt()))
                .toList();
    }
}
