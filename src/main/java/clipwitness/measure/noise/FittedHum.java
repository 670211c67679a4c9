package clipwitness.measure.noise;

import clipwitness.capture.Samples;
import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.HarmonicFit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Lines of the mains with the fit that they are from.
 *
 * @param hum        the lines
 * @param wave       the fit; empty where no line stands out of the noise
 * @param sampleRate Hz
 */
record FittedHum(MainsHum hum, Optional<FittedWave> wave, double sampleRate) {
    /** The lines as tones, with the noise that lies at their frequencies: an amplitude a whose quadratures have variance v has the power a² / 2, of variance a² v. */
    List<Tone> tones() {
        return wave.map(w -> IntStream.rangeClosed(1, w.count())
                        .mapToObj(k -> tone(w, k))
                        .toList())
                .orElse(List.of());
    }

    private Tone tone(FittedWave w, int k) {
        double square = w.fit().amplitude(k) * w.fit().amplitude(k);
        return new Tone(
                k * w.fit().cyclesPerSample() * sampleRate,
                square / 2,
                square
                        * w.fit().quadratureVariance(k)
                        * w.rest().at(k)
                        * w.rest().at(k));
    }

    /** What the fit leaves of the record. */
    Samples rest(Samples samples) {
        return wave.map(w -> rest(samples, w.fit())).orElse(samples);
    }

    private static Samples rest(Samples samples, HarmonicFit fit) {
        double[] rest = samples.toArray();
        for (int i = 0; i < rest.length; i++) {
            rest[i] -= fit.at(fit.cyclesAt(i));
        }
        return Samples.adopted(rest);
    }
}
