package clipwitness.measure.noise;

import clipwitness.capture.VerticalRange;
import clipwitness.measure.Measured;
import clipwitness.reason.Doubt;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Noise and hum of one record.
 *
 * @param band     band of the figures, Hz; empty where they are refused
 * @param spectrum what they are from; empty where they are refused
 * @param values   figures, V
 * @param hum      lines of the mains; where the sheet does not state its frequency a set for 50 Hz and one for 60 Hz, until all records of a job
 *                 were seen
 * @param floor    the converter's own noise in the band, V, where the samples show its step
 * @param range    range of the instrument
 * @param lasts    length of the record, s
 * @param doubts   doubts
 */
public record NoiseResult(
        Optional<Band> band,
        Optional<NoiseSpectrum> spectrum,
        Map<NoiseFigure, Measured> values,
        List<MainsHum> hum,
        OptionalDouble floor,
        VerticalRange range,
        double lasts,
        List<Doubt> doubts) {
    /** Copies what it is given. */
    public NoiseResult {
        Objects.requireNonNull(band, "band");
        Objects.requireNonNull(spectrum, "spectrum");
        Objects.requireNonNull(range, "range");
        values = Collections.unmodifiableMap(new EnumMap<>(values));
        hum = List.copyOf(hum);
        doubts = List.copyOf(doubts);
    }

    /** Whether the figures are refused. */
    public boolean refused() {
        return spectrum.isEmpty();
    }

    /** The same result with one set of lines left, that of the job's mains. */
    public NoiseResult withHum(MainsHum chosen) {
        return new NoiseResult(band, spectrum, values, List.of(chosen), floor, range, lasts, doubts);
    }
}
