package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import clipwitness.signal.CodeStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is doubtful about a recording of playing: cut off by the end of the converter, or silent. */
final class RecordingDoubts {
    /** Samples on the extreme code that make a cut, as for waves. */
    private static final int SHORTEST_RUN = 5;

    /** And so long, s: the round top of the lowest string of a bass, 31 Hz, stays 0.08 ms on one code of 16 bit. */
    private static final double SHORTEST_CUT = 1e-4;

    /** One cut may be a top that happens to end there. */
    private static final int FEWEST_RUNS = 3;

    /** Levels at or below this are no playing, dB of full scale: 16 bit have 33 steps left there. */
    private static final double SILENT = -60;

    private RecordingDoubts() {}

    /**
     * The doubts about a recording.
     *
     * @param loudest index of the loudest channel: where that is silent, all are
     */
    static List<Doubt> of(List<ListeningInput> channels, List<Loudness> loudnesses, int loudest) {
        List<Doubt> doubts = new ArrayList<>();
        channels.stream()
                .map(RecordingDoubts::cut)
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(doubts::add);
        silent(channels.get(loudest), loudnesses.get(loudest)).ifPresent(doubts::add);
        return doubts;
    }

    private static Optional<Doubt> silent(ListeningInput channel, Loudness loudness) {
        if (!(loudness.rms() > 0)) {
            return Optional.of(Doubt.of(Severity.WARNING, DoubtReason.LOW_RESOLUTION_SILENT));
        }
        if (channel.fullScale().isEmpty()) {
            return Optional.empty();
        }
        double level =
                Decibels.ofAmplitude(loudness.peak() / channel.fullScale().getAsDouble());
        return level <= SILENT
                ? Optional.of(Doubt.of(
                        Severity.WARNING, DoubtReason.LOW_RESOLUTION_QUIET, Argument.decimals(-level, Unit.DECIBEL, 0)))
                : Optional.empty();
    }

    private static Optional<Doubt> cut(ListeningInput channel) {
        Samples samples = channel.wave().samples();
        if (samples.gaps() == samples.size() || !(samples.maximum() > samples.minimum())) {
            return Optional.empty();
        }
        OptionalDouble step = CodeStep.of(samples);
        double width = step.orElse(Math.ulp((float) samples.maximum()));
        return cut(channel, samples.maximum(), width, step, Word.UPPER_HALF)
                .or(() -> cut(channel, samples.minimum(), width, step, Word.LOWER_HALF));
    }

    private static Optional<Doubt> cut(
            ListeningInput channel, double extreme, double width, OptionalDouble step, Word side) {
        Samples samples = channel.wave().samples();
        boolean atEnd = channel.fullScale().isPresent()
                ? Math.abs(extreme)
                        >= OverRange.END_OF_SCALE * channel.fullScale().getAsDouble()
                : step.isPresent()
                        && OverRange.fillsConverter((samples.maximum() - samples.minimum()) / step.getAsDouble());
        if (!atEnd) {
            return Optional.empty();
        }
        int shortest = (int)
                Math.max(SHORTEST_RUN, Math.ceil(SHORTEST_CUT * channel.wave().sampleRate()));
        Runs runs = Runs.on(samples, extreme, width, shortest);
        return runs.starts().size() >= FEWEST_RUNS
                ? Optional.of(Doubt.of(
                        Severity.WARNING, DoubtReason.OVER_RANGE, Argument.count(runs.longest()), Argument.word(side)))
                : Optional.empty();
    }
}
