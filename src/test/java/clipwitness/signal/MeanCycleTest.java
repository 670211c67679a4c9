package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Waves with known noise, folded on one period. */
class MeanCycleTest {
    private static final double SIGMA = 0.01;

    /** A wave given over its phase in cycles from the middle of the record, and noise of so much at each phase. */
    private static Samples record(int size, double perSample, DoubleUnaryOperator wave, DoubleUnaryOperator noise) {
        Random random = new Random(11);
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            double cycles = (i - (size - 1) / 2.0) * perSample;
            double phase = cycles - Math.floor(cycles);
            values[i] = wave.applyAsDouble(phase) + noise.applyAsDouble(phase) * random.nextGaussian();
        }
        return Samples.of(values);
    }

    private static MeanCycle cycle(Samples samples, double perSample, int harmonics) {
        return MeanCycle.of(
                samples,
                JointFit.at(List.of(samples), perSample, harmonics).channels().get(0),
                0);
    }

    private static double sine(double phase) {
        return 0.25 + Math.sin(2 * Math.PI * phase);
    }

    private static double withFifth(double phase) {
        return sine(phase) + 0.1 * Math.cos(10 * Math.PI * phase);
    }

    private static final double LONG = 1 / 600.3;

    /** 20 periods of 600 samples fill 512 bins; each of which takes a mean and a slope; the fit of two harmonics leaves the fifth: 0.1² / 2 of power. */
    @Test
    void aLongRecordFillsBins() {
        Samples samples = record(12_006, LONG, MeanCycleTest::withFifth, p -> SIGMA);
        MeanCycle cycle = cycle(samples, LONG, 2);
        assertThat(cycle.bins()).isEqualTo(512);
        assertThat(cycle.harmonicsOfNoise()).isEmpty();
        assertThat(cycle.noise()).isCloseTo(SIGMA, within(0.03 * SIGMA));
        assertThat(cycle.freedom()).isEqualTo(12_006 - 2 * 512 - 5 - 1);
        assertThat(cycle.binUncertainty()).isCloseTo(SIGMA * Math.sqrt(512.0 / 12_006), within(1e-4));
        assertThat(cycle.independentBinUncertainty()).isEqualTo(cycle.binUncertainty());
        double[] values = cycle.values();
        for (int i = 0; i < values.length; i += 7) {
            assertThat(values[i]).isCloseTo(withFifth((i + 0.5) / 512), within(5 * cycle.binUncertainty()));
        }
        assertThat(cycle.remainingPower()).isCloseTo(0.005, within(1e-4));
        assertThat(cycle.fit().count()).isEqualTo(2);
        assertThat(cycle.cyclesPerSample()).isEqualTo(LONG);
    }

    /** 12,006 samples are 16 a bin of 512, and not of 1024; 1,600 samples are 6 a bin of 256, 1,500 are not. */
    @Test
    void thereAreAsManyBinsAsTheSamplesFill() {
        assertThat(cycle(record(20_000, 1 / 1100.7, MeanCycleTest::sine, p -> SIGMA), 1 / 1100.7, 2)
                        .bins())
                .isEqualTo(1024);
        assertThat(cycle(record(1600, 1 / 300.7, MeanCycleTest::sine, p -> SIGMA), 1 / 300.7, 2)
                        .harmonicsOfNoise())
                .isEmpty();
        MeanCycle few = cycle(record(1500, 1 / 300.7, MeanCycleTest::sine, p -> SIGMA), 1 / 300.7, 2);
        assertThat(few.harmonicsOfNoise()).hasValue(60);
        assertThat(few.bins()).isEqualTo(256);
        MeanCycle coarse = cycle(record(20_000, 1 / 255.3, MeanCycleTest::sine, p -> SIGMA), 1 / 255.3, 2);
        assertThat(coarse.harmonicsOfNoise()).hasValue(60);
    }

    /** Of a period of 50.3 samples 22 harmonics lie below 0.45 of the sample rate: 45 parameters, a mean with its noise divided by root of N over 45. */
    @Test
    void aShortPeriodIsTheFitOfAllHarmonics() {
        double perSample = 1 / 50.3;
        MeanCycle cycle = cycle(record(5030, perSample, MeanCycleTest::withFifth, p -> SIGMA), perSample, 2);
        assertThat(cycle.bins()).isEqualTo(256);
        assertThat(cycle.harmonicsOfNoise()).hasValue(22);
        assertThat(cycle.noise()).isCloseTo(SIGMA, within(0.04 * SIGMA));
        assertThat(cycle.freedom()).isEqualTo(5030 - 45 - 1);
        assertThat(cycle.binUncertainty()).isCloseTo(SIGMA * Math.sqrt(45.0 / 5030), within(5e-5));
        assertThat(cycle.independentBinUncertainty()).isCloseTo(SIGMA * Math.sqrt(256.0 / 5030), within(1e-4));
        assertThat(cycle.remainingPower()).isCloseTo(0.005, within(2e-4));
        assertThat(cycle.values()[100]).isCloseTo(withFifth(100.5 / 256), within(5 * cycle.binUncertainty()));
    }

    /** What noise alone puts into the harmonics above the fit is taken off: 2 sigma² / N each. */
    @Test
    void noiseLeavesNoPowerOnAverage() {
        double sum = 0;
        for (int turn = 0; turn < 8; turn++) {
            double perSample = 1 / (50.3 + turn / 10.0);
            sum += cycle(record(600, perSample, MeanCycleTest::sine, p -> SIGMA), perSample, 2)
                            .remainingPower()
                    / 8;
        }
        double ofNoise = 20 * SIGMA * SIGMA / 600; // of the harmonics 3 to 22
        assertThat(Math.abs(sum)).isLessThan(0.35 * ofNoise);
    }

    /** A median has root of half pi times the scatter of a mean; a standard uncertainty is taken off. */
    @Test
    void theLeastNoiseIsAStandardUncertaintyUnderItsMedian() {
        MeanCycle cycle = cycle(record(12_006, LONG, MeanCycleTest::sine, p -> SIGMA), LONG, 2);
        double expected = SIGMA * Math.sqrt(1 - Math.sqrt(Math.PI / 2) * Math.sqrt(2 / 10_982.0));
        assertThat(cycle.leastNoise()).isCloseTo(expected, within(0.04 * SIGMA));
        assertThat(cycle.leastNoise()).isLessThan(1.03 * cycle.noise());
    }

    /** Three times the noise where the sine is less than half as steep as anywhere: a third of the period about each peak. */
    @Test
    void onlySteepBinsCountForTheNoiseOfSlopes() {
        MeanCycle cycle = cycle(
                record(
                        12_006,
                        LONG,
                        MeanCycleTest::sine,
                        p -> Math.abs(Math.cos(2 * Math.PI * p)) > 0.45 ? SIGMA : 3 * SIGMA),
                LONG,
                2);
        assertThat(cycle.leastNoiseOnSlopes().orElseThrow()).isCloseTo(SIGMA, within(0.06 * SIGMA));
        assertThat(cycle.noise()).isGreaterThan(1.5 * SIGMA);
    }

    /** A rectangle is steep in two places: two bins beside each edge. */
    @Test
    void tooFewSteepBinsTellNothing() {
        MeanCycle cycle = cycle(record(12_000, 1 / 600.0, p -> p < 0.5 ? 1 : -1, p -> SIGMA), 1 / 600.0, 20);
        assertThat(cycle.leastNoiseOnSlopes()).isEmpty();
    }

    @Test
    void theSmoothCycleHasTheHarmonicsThatAreLargeEnough() {
        MeanCycle cycle = cycle(record(12_006, LONG, MeanCycleTest::withFifth, p -> 0), LONG, 2);
        double[] with = cycle.smooth(64, 0.05);
        double[] without = cycle.smooth(64, 0.2);
        for (int i = 0; i < 64; i++) {
            assertThat(with[i]).isCloseTo(withFifth(i / 64.0), within(1e-6));
            assertThat(without[i]).isCloseTo(sine(i / 64.0), within(1e-6));
        }
    }

    /** Each harmonic turned by a quarter of its cycle is the wave a quarter of its period later. */
    @Test
    void aChangeOfTheHarmonicsReachesTheBins() {
        MeanCycle cycle = cycle(record(12_006, LONG, MeanCycleTest::withFifth, p -> SIGMA), LONG, 2);
        MeanCycle halved = cycle.with((k, cosine, sine) -> new double[] {cosine / 2, sine / 2});
        for (int i = 0; i < 512; i += 13) {
            double swing = withFifth((i + 0.5) / 512) - 0.25;
            assertThat(halved.values()[i]).isCloseTo(0.25 + swing / 2, within(6 * cycle.binUncertainty()));
        }
        assertThat(halved.noise()).isEqualTo(cycle.noise());
        assertThat(halved.freedom()).isEqualTo(cycle.freedom());
        assertThat(halved.fit().amplitude(1)).isCloseTo(0.5, within(1e-3));
        assertThat(halved.bins()).isEqualTo(512);
    }

    /** What the cycle leaves of a record is the noise, thinned by averaging: sigma over root of 10. */
    @Test
    void whatIsLeftOfTheRecordIsItsNoise() {
        Samples samples = record(12_006, LONG, MeanCycleTest::withFifth, p -> SIGMA);
        double[] left = new double[1200];
        cycle(samples, LONG, 2).residuals(samples, 10, 1200, left);
        double square = 0;
        for (double v : left) {
            square += v * v / 1200;
        }
        assertThat(Math.sqrt(square)).isCloseTo(SIGMA / Math.sqrt(10), within(3e-4));
    }

    /** With the origin at a quarter the cycle begins at the peak of the sine. */
    @Test
    void theCycleBeginsAtItsOrigin() {
        Samples samples = record(12_006, LONG, MeanCycleTest::sine, p -> 0);
        HarmonicFit fit = JointFit.at(List.of(samples), LONG, 2).channels().get(0);
        double[] values = MeanCycle.of(samples, fit, 0.25).values();
        assertThat(values[0]).isCloseTo(1.25, within(1e-4));
        assertThat(values[256]).isCloseTo(-0.75, within(1e-4));
    }
}
