package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.SlowTone;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.FittedWave;
import clipwitness.quantity.Decibels;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The channels of a record without what is slow in them or stands between their harmonics, and what that may have moved in the figures.
 *
 * @param fit     fit of the channels without it
 * @param output  the output, with what may have been moved in it
 * @param usableInput the input, where it is usable
 * @param own     what was found in the output
 * @param ofInput what was found in the input
 * @param moves   whether the harmonics of the output follow the slow wave
 */
record SlowRemoval(
        ChannelFit fit,
        FittedWave output,
        Optional<FittedWave> usableInput,
        Optional<SlowSearch> own,
        Optional<SlowSearch> ofInput,
        boolean moves) {
    /** Times that a slow wave and the harmonics are fitted in turn: each shares little with the other. */
    private static final int ROUNDS = 3;

    /**
     * Looks at all channels.
     *
     * @param raw      the channels as captured, the output first, the input second where it is usable
     * @param rawFit   their fit
     * @param rawInput the input, where it is usable
     */
    static SlowRemoval of(
            WaveformInput capture,
            List<Samples> raw,
            ChannelFit rawFit,
            Optional<FittedWave> rawInput,
            double start,
            int harmonics) {
        double rate = capture.output().sampleRate();
        Optional<SlowSearch> own = SlowSearch.of(raw.get(0), rawFit.output(), rate, capture.mains());
        Optional<SlowSearch> ofInput = rawInput.filter(FittedWave::hasFundamental)
                .flatMap(i -> SlowSearch.of(raw.get(1), i, rate, capture.mains()));
        if (own.isEmpty() && ofInput.isEmpty()) {
            return new SlowRemoval(rawFit, rawFit.output(), rawInput, own, ofInput, false);
        }
        List<Samples> channels = new ArrayList<>(raw);
        ChannelFit fit = rawFit;
        Optional<FittedWave> input = rawInput;
        for (int round = 0; round < ROUNDS; round++) {
            own.ifPresent(s -> channels.set(0, s.without(raw.get(0))));
            ofInput.ifPresent(s -> channels.set(1, s.without(raw.get(1))));
            ChannelFit found = ChannelFit.of(channels, start, harmonics);
            Optional<FittedWave> foundInput = rawInput.map(i -> found.input(channels));
            own = own.map(s -> s.and(channels.get(0), found.output()));
            ofInput = ofInput.map(s -> s.and(channels.get(1), foundInput.orElseThrow()));
            fit = found;
            input = foundInput;
        }
        FittedWave output = fit.output();
        Optional<SlowSearch> theirs = own;
        double gain = ofInput.isPresent()
                ? output.fit().amplitude(1) / input.orElseThrow().fit().amplitude(1)
                : 1;
        FittedWave moved = ofInput.or(() -> theirs)
                .map(s -> s.moved(channels.get(0), output, theirs, gain))
                .orElse(output);
        return new SlowRemoval(fit, moved, input, own, ofInput, !moved.equals(output));
    }

    /** The usable input. */
    FittedWave input() {
        return usableInput.orElseThrow();
    }

    /** What was found in the output. */
    Optional<SlowTone> tone() {
        return own.map(SlowSearch::tone);
    }

    /** Doubts about the output. */
    List<Doubt> doubts() {
        return Stream.concat(
                        own.stream().flatMap(s -> s.doubts().stream()),
                        moves ? Stream.of(Doubt.of(Severity.WARNING, DoubtReason.SLOW_WAVE_MOVES)) : Stream.empty())
                .toList();
    }

    /** Doubts about the input. */
    List<Doubt> doubtsOfInput() {
        return ofInput.stream().flatMap(s -> s.doubts().stream()).toList();
    }

    /**
     * Adds what the curve's figures owe to a slow wave of the input: the tone swings about another point than the input's mean, by the wave's
     * mean over the record at most, a bound, u = a / sqrt 3. Onsets move by that, clip levels by the slope times that.
     */
    void widenCurve(Map<WaveformQuantity, Measured> values) {
        double offset = moves ? ofInput.map(SlowSearch::offset).orElse(0.0) : 0;
        Optional<Double> gain = Stream.of(WaveformQuantity.SMALL_SIGNAL_GAIN, WaveformQuantity.GAIN)
                .flatMap(q -> Optional.ofNullable(values.get(q)).flatMap(Measured::asValue).stream())
                .map(v -> Decibels.toAmplitude(v.number()))
                .findFirst();
        if (offset > 0 && gain.isPresent()) {
            double centre = gain.get() * offset;
            double span = number(values, WaveformQuantity.CLIP_UP) + number(values, WaveformQuantity.CLIP_DOWN);
            widen(values, WaveformQuantity.ONSET_UP, offset);
            widen(values, WaveformQuantity.ONSET_DOWN, offset);
            widen(values, WaveformQuantity.CLIP_UP, centre);
            widen(values, WaveformQuantity.CLIP_DOWN, centre);
            widen(values, WaveformQuantity.CLIP_ASYMMETRY, 200 * centre / span);
        }
    }

    private static double number(Map<WaveformQuantity, Measured> values, WaveformQuantity quantity) {
        return Optional.ofNullable(values.get(quantity))
                .flatMap(Measured::asValue)
                .map(Measured.Value::number)
                .orElse(0.0);
    }

    private static void widen(Map<WaveformQuantity, Measured> values, WaveformQuantity quantity, double bound) {
        values.computeIfPresent(
                quantity,
                (q, m) -> m.asValue()
                        .<Measured>map(v -> v.plus(Source.METHOD, bound / Math.sqrt(3)))
                        .orElse(m));
    }
}
