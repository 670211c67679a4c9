package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.SlowTone;
import clipwitness.measure.wave.FittedWave;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.signal.SlowWave;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Whether a slow wave runs under the tone of a record by more than noise explains and 0.2 % of the swing, and the record without it.
 */
final class SlowSearch {
    /** 0.2 % of the swing, span against span: the amplitude is half the span. */
    private static final double LEAST_SHARE = 0.002 / 2;

    private static final List<Double> MAINS = List.of(50.0, 60.0, 100.0, 120.0);
    /** A sine of the mains frequency explains a hum that is not bent. */
    private static final double OF_THE_MAINS = 0.95;

    private static final double NEAR_THE_BEST = 0.02;

    private final SlowWave wave;
    private final double duration;

    private SlowSearch(SlowWave wave, double duration) {
        this.wave = wave;
        this.duration = duration;
    }

    /**
     * Looks at one channel.
     *
     * @param samples    the record
     * @param fitted     its fit
     * @param sampleRate Hz
     */
    static Optional<SlowSearch> of(Samples samples, FittedWave fitted, double sampleRate) {
        double[] cycle = fitted.cycle().values();
        double swing = Arrays.stream(cycle).max().orElse(0)
                - Arrays.stream(cycle).min().orElse(0);
        return SlowWave.of(samples, fitted.cycle())
                .filter(w -> w.amplitude() - 2 * w.noise() > LEAST_SHARE * swing)
                .map(w -> new SlowSearch(w, samples.size() / sampleRate));
    }

    /** The record without the slow wave. */
    Samples without(Samples samples) {
        return wave.without(samples);
    }

    /** This and what was found of it in the record without this. */
    SlowSearch and(Samples rest, FittedWave fitted) {
        return SlowWave.of(rest, fitted.cycle())
                .map(more -> new SlowSearch(wave.plus(more), duration))
                .orElse(this);
    }

    /** Frequency and amplitude. */
    SlowTone tone() {
        return new SlowTone(
                mains().orElse(wave.cycles() / duration),
                Measured.withNoise(wave.amplitude(), Unit.VOLT, wave.noise()));
    }

    private Optional<Double> mains() {
        double most = wave.shareOfSine(wave.cycles());
        return MAINS.stream()
                .filter(f -> wave.shareOfSine(f * duration) > Math.max(OF_THE_MAINS, most - NEAR_THE_BEST))
                .findFirst();
    }

    /** The doubt that names it. */
    Doubt doubt() {
        SlowTone tone = tone();
        return Doubt.of(
                Severity.WARNING,
                mains().isPresent() ? DoubtReason.SLOW_WAVE_MAINS : DoubtReason.SLOW_WAVE,
                Argument.prefixed(tone.frequency(), Unit.HERTZ, 2),
                Argument.prefixed(tone.amplitude().number(), Unit.VOLT, 2));
    }
}
