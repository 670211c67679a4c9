package clipwitness.bench;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What an oscilloscope keeps of one trigger.
 *
 * @param start    time of the first sample from the trigger, s
 * @param interval sample interval as the instrument states it, s
 * @param channels volts of each channel
 */
public record Recording(double start, double interval, List<Column> channels) {
    /** Copies what it is given. */
    public Recording {
        channels = List.copyOf(channels);
    }

    /** Number of samples. */
    public int size() {
        return channels.get(0).values().size();
    }

    /** Time from the trigger in s, to the microsecond. */
    public Column time() {
        double[] times = IntStream.range(0, size())
                .mapToDouble(i -> start + i * interval)
                .toArray();
        return new Column("time", "s", 6, Samples.of(times));
    }

    /** The channels behind a column of time. */
    public List<Column> behind(Column time) {
        return Stream.concat(Stream.of(time), channels.stream()).toList();
    }
}
