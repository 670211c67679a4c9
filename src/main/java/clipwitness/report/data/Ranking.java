package clipwitness.report.data;

import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.NamedDevice;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Devices ranked into pairs.
 *
 * @param devices     devices in the order given
 * @param pairs       pairs, smallest mismatch first
 * @param left        devices without a partner
 * @param temperature temperature of the traces
 * @param purpose     job that the pairs are for, where one was named
 * @param digest      one digest over all files, hexadecimal SHA-256
 */
public record Ranking(
        List<NamedDevice> devices,
        List<RankedPair> pairs,
        List<String> left,
        Temperature temperature,
        Optional<Purpose> purpose,
        String digest) {
    /** Copies what it is given. */
    public Ranking {
        Objects.requireNonNull(temperature, "temperature");
        Objects.requireNonNull(purpose, "purpose");
        Objects.requireNonNull(digest, "digest");
        devices = List.copyOf(devices);
        pairs = List.copyOf(pairs);
        left = List.copyOf(left);
    }

    /**
     * What pairs are for.
     *
     * @param job       number of the job
     * @param reference devices of the pair before, against which forecasts are; none where nothing can be forecast
     * @param source    voltage of the clipper's source at which clip levels are forecast, V; empty where nothing can be forecast
     */
    public record Purpose(String job, List<String> reference, OptionalDouble source) {
        /** Copies what it is given. */
        public Purpose {
            Objects.requireNonNull(job, "job");
            Objects.requireNonNull(source, "source");
            reference = List.copyOf(reference);
        }
    }
}
