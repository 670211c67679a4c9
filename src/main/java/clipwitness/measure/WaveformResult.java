package clipwitness.measure;

import clipwitness.capture.VerticalRange;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/**
 * What was measured on one waveform capture.
 *
 * @param values     every figure of {@link WaveformQuantity} that applies, as value or refusal
 * @param harmonics  harmonics from the second up
 * @param harmonicCount number of harmonics fitted, the fundamental included; 0 where nothing could be fitted
 * @param spectrum   the complex harmonics of the output
 * @param cycle      mean cycle of the output
 * @param inputCycle mean cycle of the input on the same time axis
 * @param transfer   transfer curve
 * @param slowTone   what runs slower than the tone, where it stands out
 * @param range      range of the instrument at which the output was captured
 * @param doubts     what the measuring found doubtful
 */
public record WaveformResult(
        Map<WaveformQuantity, Measured> values,
        List<Harmonic> harmonics,
        int harmonicCount,
        Optional<HarmonicSpectrum> spectrum,
        Optional<CycleTrace> cycle,
        Optional<CycleTrace> inputCycle,
        Optional<TransferCurve> transfer,
        Optional<SlowTone> slowTone,
        VerticalRange range,
        List<Doubt> doubts) {
    /** Copies what it is given. */
    public WaveformResult {
        values = Collections.unmodifiableMap(new EnumMap<>(values));
        harmonics = List.copyOf(harmonics);
        doubts = List.copyOf(doubts);
    }

    /** A result without a slow wave. */
    public WaveformResult(
            Map<WaveformQuantity, Measured> values,
            List<Harmonic> harmonics,
            int harmonicCount,
            Optional<HarmonicSpectrum> spectrum,
            Optional<CycleTrace> cycle,
            Optional<CycleTrace> inputCycle,
            Optional<TransferCurve> transfer,
            VerticalRange range,
            List<Doubt> doubts) {
        this(values, harmonics, harmonicCount, spectrum, cycle, inputCycle, transfer, Optional.empty(), range, doubts);
    }

    /** A figure; a refusal where it was not measured. */
    public Measured get(WaveformQuantity quantity) {
        Measured found = values.get(quantity);
        return found != null ? found : Measured.refused(quantity.unit(), FigureReason.NO_INPUT_CHANNEL);
    }

    /** The same result with a function applied to each figure. */
    public WaveformResult withValues(BiFunction<WaveformQuantity, Measured, Measured> anew) {
        Map<WaveformQuantity, Measured> others = new EnumMap<>(WaveformQuantity.class);
        values.forEach((quantity, value) -> others.put(quantity, anew.apply(quantity, value)));
        return new WaveformResult(
                others, harmonics, harmonicCount, spectrum, cycle, inputCycle, transfer, slowTone, range, doubts);
    }

    /** A figure, refused where it is in volts: for captures that do not state what their values are worth. */
    public static Measured withoutVolts(Measured measured) {
        return measured.unit() == Unit.VOLT ? Measured.refused(Unit.VOLT, FigureReason.NO_VOLTS) : measured;
    }

    /** The same result with a function applied to each harmonic. */
    public WaveformResult withHarmonics(UnaryOperator<Harmonic> anew) {
        return new WaveformResult(
                values,
                harmonics.stream().map(anew).toList(),
                harmonicCount,
                spectrum,
                cycle,
                inputCycle,
                transfer,
                slowTone,
                range,
                doubts);
    }

    /** The same capture, its figures refused for a doubt. */
    public WaveformResult refusedFor(Doubt doubt) {
        List<Doubt> more = new ArrayList<>(doubts);
        more.add(doubt);
        Map<WaveformQuantity, Measured> none = new EnumMap<>(WaveformQuantity.class);
        values.keySet().forEach(q -> none.put(q, Measured.refused(q.unit(), doubt.reason())));
        return new WaveformResult(
                none,
                List.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                VerticalRange.UNKNOWN,
                more);
    }

    /** Whether a doubt refused the figures. */
    public boolean refused() {
        return doubts.stream().anyMatch(Doubt::refuses);
    }
}
