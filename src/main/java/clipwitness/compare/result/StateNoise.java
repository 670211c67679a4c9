package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.Measured;
import clipwitness.measure.noise.Band;
import clipwitness.measure.noise.HumLine;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.measure.noise.NoiseSpectrum;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Noise and hum of one state under one condition.
 *
 * @param state     state
 * @param condition condition
 * @param band      band of the figures, Hz; empty where they are refused
 * @param spectrum  spectrum of its first capture; empty where that was refused
 * @param values    figures at the output, V
 * @param atInput   the same divided by the gain for small signals, V
 * @param hum       lines of the mains
 * @param nominal   nominal mains frequency, Hz
 * @param mains     the same as measured; empty where no line stands out of the noise
 * @param floor     the converter's own noise in the band, V, where it is known
 */
public record StateNoise(
        String state,
        Condition condition,
        Optional<Band> band,
        Optional<NoiseSpectrum> spectrum,
        Map<NoiseFigure, Measured> values,
        Map<NoiseFigure, Measured> atInput,
        List<HumLine> hum,
        double nominal,
        Optional<Measured.Value> mains,
        OptionalDouble floor) {
    /** Copies what it is given. */
    public StateNoise {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(condition, "condition");
        values = Collections.unmodifiableMap(new EnumMap<>(values));
        atInput = Collections.unmodifiableMap(new EnumMap<>(atInput));
        hum = List.copyOf(hum);
    }
}
