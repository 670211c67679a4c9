package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Responses of systems that are known. */
class LocalPolynomialTest {
    private static final int SIZE = 600;

    private static Samples white(long seed, double sigma) {
        Random random = new Random(seed);
        return Samples.of(IntStream.range(0, SIZE)
                .mapToDouble(i -> sigma * random.nextGaussian())
                .toArray());
    }

    /** y(n) = 0.6 x(n) + 0.3 x(n - 1), what came before the record unknown: 0.6 + 0.3 e^(-jw). */
    private static Samples filtered(Samples x, Samples noise) {
        return Samples.of(IntStream.range(0, SIZE)
                .mapToDouble(i -> 0.6 * x.at(i) + 0.3 * (i == 0 ? 1.7 : x.at(i - 1)) + noise.at(i))
                .toArray());
    }

    private static LocalPolynomial at(Samples x, Samples y, int from, int to, double centre) {
        return LocalPolynomial.at(DiscreteSpectrum.of(x), DiscreteSpectrum.of(y), from, to, centre)
                .orElseThrow();
    }

    @Test
    void aKnownResponseIsFoundAlsoBesideTheMiddleOfTheBins() {
        Samples x = white(1, 3);
        Samples y = filtered(x, white(2, 0));
        for (double centre : new double[] {100, 97.3}) {
            double w = 2 * Math.PI * centre / SIZE;
            LocalPolynomial found = at(x, y, 90, 110, centre);
            assertThat(found.real()).isCloseTo(0.6 + 0.3 * Math.cos(w), within(1e-4));
            assertThat(found.imaginary()).isCloseTo(-0.3 * Math.sin(w), within(1e-4));
            assertThat(found.magnitude()).isCloseTo(Math.sqrt(0.45 + 0.36 * Math.cos(w)), within(1e-4));
            assertThat(found.phase())
                    .isCloseTo(Math.atan(-0.3 * Math.sin(w) / (0.6 + 0.3 * Math.cos(w))), within(2e-4));
            assertThat(found.coherence()).isCloseTo(1, within(1e-6));
            assertThat(found.freedom()).isEqualTo(42 - 12);
        }
    }

    /** Noise half as strong as the output: 200 responses scatter as stated, and the output is explained to 0.45 * 9 / (0.45 * 9 + 1) of its power. */
    @Test
    void noiseScattersTheResponseAsStated() {
        double squares = 0;
        double stated = 0;
        double explained = 0;
        double w = 2 * Math.PI * 150 / SIZE;
        for (int record = 0; record < 200; record++) {
            Samples x = white(1000 + record, 3);
            LocalPolynomial found = at(x, filtered(x, white(5000 + record, 1)), 140, 160, 150);
            squares += Math.pow(found.real() - 0.6 - 0.3 * Math.cos(w), 2)
                    + Math.pow(found.imaginary() + 0.3 * Math.sin(w), 2);
            stated += 2 * found.uncertainty() * found.uncertainty();
            explained += found.coherence() / 200;
        }
        assertThat(squares / stated).isBetween(0.75, 1.3);
        assertThat(explained).isCloseTo(4.05 / 5.05, within(0.04));
    }

    @Test
    void withoutInputOrOutputThereIsNoResponse() {
        DiscreteSpectrum none = DiscreteSpectrum.of(white(1, 0));
        DiscreteSpectrum some = DiscreteSpectrum.of(white(1, 1));
        assertThat(LocalPolynomial.at(none, some, 90, 110, 100)).isEmpty();
        assertThat(LocalPolynomial.at(some, none, 90, 110, 100)).isEmpty();
        DiscreteSpectrum pulse = DiscreteSpectrum.of(Samples.of(
                IntStream.range(0, SIZE).mapToDouble(i -> i == 0 ? 1 : 0).toArray()));
        assertThat(LocalPolynomial.at(pulse, some, 90, 110, 100)).isEmpty();
    }
}
