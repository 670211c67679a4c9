package clipwitness.measure.noise;

import clipwitness.measure.Measured;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The lines of the mains in a record.
 *
 * @param nominal nominal frequency of the mains, Hz
 * @param mains   the frequency as measured, Hz; empty where no line stands out of the noise
 * @param lines   lines at 1 to 10 times the mains, as far as they lie below 0.45 of the sample rate
 */
public record MainsHum(double nominal, Optional<Measured.Value> mains, List<HumLine> lines) {
    /** Copies what it is given. */
    public MainsHum {
        Objects.requireNonNull(mains, "mains");
        lines = List.copyOf(lines);
    }

    /** Whether a line stands out of the noise. */
    public boolean stands() {
        return lines.stream().anyMatch(HumLine::stands);
    }

    /** Power of the lines that stand out of the noise, V². */
    public double power() {
        return lines.stream()
                .filter(HumLine::stands)
                .mapToDouble(l -> l.square().power() / 2)
                .sum();
    }
}
