package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sums of half-period cosines that are known, and hum that was added to a tone. */
class SlowWaveSeriesTest {
    private static final SlowWave KNOWN = new SlowWave(Samples.of(new double[] {1, 0, 0.5}), 0.5, 1.5, 0.03);

    /** cos(pi t) + cos(3 pi t) / 2. */
    @Test
    void aSeriesIsTheSumOfItsCosines() {
        assertThat(KNOWN.at(0)).isCloseTo(1.5, within(1e-12));
        assertThat(KNOWN.at(0.25)).isCloseTo(Math.sqrt(0.5) / 2, within(1e-12));
        assertThat(KNOWN.at(1)).isCloseTo(-1.5, within(1e-12));
        Samples left = KNOWN.without(Samples.of(new double[] {2, 2}));
        assertThat(left.at(0)).isCloseTo(2 - Math.sqrt(0.5) / 2, within(1e-12));
        assertThat(left.at(1)).isCloseTo(2 + Math.sqrt(0.5) / 2, within(1e-12));
    }

    /** 1, 0, 0.5 and -1, 1 make 0, 1, 0.5; 0, 0, 0, 0.2 more is one term more, and each term has a noise of 0.03 / root 3. */
    @Test
    void seriesAddTermByTerm() {
        SlowWave shorter = KNOWN.plus(new SlowWave(Samples.of(new double[] {-1, 1}), 1, 1, 7));
        assertThat(shorter.terms().toArray()).containsExactly(new double[] {0, 1, 0.5}, within(1e-12));
        assertThat(shorter.noise()).isCloseTo(0.03, within(1e-12));
        SlowWave longer = KNOWN.plus(new SlowWave(Samples.of(new double[] {0, 0, 0, 0.2}), 1, 1, 7));
        assertThat(longer.terms().toArray()).containsExactly(new double[] {1, 0, 0.5, 0.2}, within(1e-12));
        assertThat(longer.noise()).isCloseTo(0.03 * 2 / Math.sqrt(3), within(1e-12));
    }

    /** cos(4 pi t) alone has two periods and its amplitude; half its span is 1. */
    @Test
    void aPureCosineIsExplainedByItself() {
        SlowWave pure = new SlowWave(Samples.of(new double[] {-1, 0, 0.5}), 0, 0, 0)
                .plus(new SlowWave(Samples.of(new double[] {1, 0, -0.5, 1}), 0, 0, 0));
        assertThat(pure.cycles()).isCloseTo(2, within(1e-9));
        assertThat(pure.amplitude()).isCloseTo(1, within(1e-3));
        assertThat(pure.shareOfSine(2)).isCloseTo(1, within(1e-9));
        assertThat(pure.shareOfSine(1)).isCloseTo(0, within(1e-9));
        assertThat(pure.sine(2).amplitude()).isCloseTo(1, within(1e-9));
        assertThat(pure.sine(2).constant()).isCloseTo(0, within(1e-9));
    }

    /** A quarter period over the record, cos(pi t / 2) less its mean of 2 / pi, has that mean as its constant, turned. */
    @Test
    void aSineThatDoesNotComeRoundHasAConstant() {
        double[] terms = new double[40];
        for (int j = 1; j <= terms.length; j++) {
            double a = Math.sin(Math.PI * (0.5 - j)) / (Math.PI * (0.5 - j));
            double b = Math.sin(Math.PI * (0.5 + j)) / (Math.PI * (0.5 + j));
            terms[j - 1] = a + b;
        }
        SlowWave quarter = new SlowWave(Samples.of(terms), 0, 0, 0);
        assertThat(quarter.sine(0.25).amplitude()).isCloseTo(1, within(0.02));
        assertThat(quarter.sine(0.25).constant()).isCloseTo(-2 / Math.PI, within(0.02));
    }

    private static CosineSeries series(double[] values) {
        Samples samples = Samples.of(values);
        HarmonicFit fit = JointFit.of(List.of(samples), 0.002, 5).channels().get(0);
        return new CosineSeries(samples, MeanCycle.of(samples, fit, 0));
    }

    private static double[] tone(double hum, double noise) {
        Random random = new Random(3);
        double[] values = new double[10_000];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.sin(2 * Math.PI * 0.002 * i)
                    + hum * Math.sin(2 * Math.PI * 3.3 * i / values.length)
                    + noise * random.nextGaussian();
        }
        return values;
    }

    /** Each cosine of white noise over N samples scatters by s root (2 / N). */
    @Test
    void humUnderATone() {
        SlowWave hum = SlowWave.of(series(tone(0.1, 0.01))).orElseThrow();
        assertThat(hum.cycles()).isCloseTo(3.3, within(0.1));
        assertThat(hum.amplitude()).isCloseTo(0.1, within(0.004));
        assertThat(hum.noise()).isCloseTo(0.01 * Math.sqrt(2.0 * hum.terms().size() / 10_000), within(3e-4));
        assertThat(hum.terms().size()).isBetween(7, 32);
        double[] left = hum.without(Samples.of(tone(0.1, 0.01))).toArray();
        double[] clean = tone(0, 0.01);
        double mean = 0.1 * (1 - Math.cos(2 * Math.PI * 3.3)) / (2 * Math.PI * 3.3);
        double squares = 0;
        for (int i = 0; i < left.length; i++) {
            squares += Math.pow(left[i] - clean[i] - mean, 2) / left.length;
        }
        assertThat(Math.sqrt(squares)).isLessThan(0.004);
    }

    @Test
    void noiseAloneIsNoSlowWave() {
        assertThat(SlowWave.of(series(tone(0, 0.01)))).isEmpty();
        assertThat(SlowWave.of(series(tone(0.0003, 0.01)))).isEmpty();
        double[] brief = new double[1200];
        System.arraycopy(tone(0.1, 0.01), 0, brief, 0, brief.length);
        assertThat(SlowWave.of(series(brief))).isEmpty();
    }

    /** Of 500 samples a period 15 are averaged, to 32 a period or more; the series reaches 9.6 half periods of each period. */
    @Test
    void theSeriesCoversFiveHarmonics() {
        CosineSeries series = series(tone(0.1, 0.01));
        assertThat(series.periods()).isCloseTo(20, within(1e-3));
        assertThat(series.length()).isEqualTo(10_000 / 15);
        assertThat(series.last()).isEqualTo(192);
        assertThat(series.isBetween(80)).isFalse();
        assertThat(series.isBetween(82)).isFalse();
        assertThat(series.isBetween(83)).isTrue();
        assertThat(series.density() * 2 / series.length()).isCloseTo(1e-4 * 2 / 10_000, within(8e-9));
        double[] line = series.line(3.3);
        assertThat(Math.hypot(line[0], line[1])).isCloseTo(0.1, within(0.01));
    }
}
