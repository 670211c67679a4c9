package clipwitness.measure.capture;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Samples;
import clipwitness.capture.Severity;
import clipwitness.measure.Measured;
import clipwitness.measure.SlowTone;
import clipwitness.measure.wave.FittedWave;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
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
    private static final NumberText NUMBERS = NumberText.in("en");

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
        double swing = Arrays.stream(cycle).max().orElse(0) - Arrays.stream(cycle).min().orElse(0);
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
        String what = mains().isPresent() ? ", as hum from the mains has it," : ", hum, drift or a beat,";
        return new Doubt(
                DoubtCode.SLOW_WAVE,
                Severity.WARNING,
                "a slow wave of about " + NUMBERS.rounded(tone.frequency(), Unit.HERTZ, 2) + what + " runs under the tone with "
                        + NUMBERS.rounded(tone.amplitude().number(), Unit.VOLT, 2)
                        + " of amplitude: it was taken out of the figures");
    }
}
