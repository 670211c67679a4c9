package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Sums over bins against a regression of the samples of each bin, one after the other. */
class FoldedResidualsTest {
    private static final int BINS = 16;
    private static final double ORIGIN = 0.37;
    private static final double CYCLES_PER_SAMPLE = 0.00317;

    private final double[] values = new double[1500];
    private final List<List<double[]>> bins = new ArrayList<>();
    private HarmonicFit fit;
    private FitTable table;
    private FitSamples series;
    private FoldedResiduals folded;

    @BeforeEach
    void fold() {
        Random random = new Random(4);
        for (int i = 0; i < values.length; i++) {
            double angle = 2 * Math.PI * i * CYCLES_PER_SAMPLE;
            values[i] = 3 + Math.sin(angle) + 0.3 * Math.max(0, Math.cos(angle + 1)) + 0.05 * random.nextGaussian();
        }
        values[700] = Double.NaN;
        Samples samples = Samples.of(values);
        series = FitSamples.of(samples);
        fit = JointFit.at(List.of(samples), CYCLES_PER_SAMPLE, 2).channels().get(0);
        table = new FitTable(fit);
        folded = new FoldedResiduals(series, fit, table, ORIGIN, BINS);
        IntStream.range(0, BINS).forEach(b -> bins.add(new ArrayList<>()));
        for (int i = 0; i < values.length; i++) {
            double cycles = (i - 749.5) * CYCLES_PER_SAMPLE;
            double phase = cycles - ORIGIN - Math.floor(cycles - ORIGIN);
            if (i != 700) {
                bins.get((int) (phase * BINS)).add(new double[] {phase, values[i] - fit.at(cycles)});
            }
        }
    }

    private SimpleRegression line(int bin) {
        SimpleRegression line = new SimpleRegression();
        bins.get(bin).forEach(p -> line.addData(p[0], p[1]));
        return line;
    }

    @Test
    void eachBinHasTheMeanAndTheScatterOfItsSamples() {
        double whole = 0;
        for (int b = 0; b < BINS; b++) {
            double mean = bins.get(b).stream().mapToDouble(p -> p[1]).average().orElseThrow();
            assertThat(folded.mean(b)).isCloseTo(mean, within(1e-7));
            assertThat(folded.scatterEnergy(b)).isCloseTo(line(b).getSumSquaredErrors(), within(1e-6));
            assertThat(folded.freedom(b)).isEqualTo(bins.get(b).size() - 2);
            whole += line(b).getSumSquaredErrors();
        }
        assertThat(folded.scatterEnergy()).isCloseTo(whole, within(1e-5));
        assertThat(folded.count()).isEqualTo(1499);
        assertThat(folded.freedom()).isEqualTo(1499 - 2 * BINS);
        assertThat(folded.bins()).isEqualTo(BINS);
    }

    @Test
    void theLinesExplainWhatTheyDoNotLeaveLessNoiseForTwoParameters() {
        double all = 0;
        double explained = 0;
        for (int b = 0; b < BINS; b++) {
            double squares = bins.get(b).stream().mapToDouble(p -> p[1] * p[1]).sum();
            double ofLine = squares - line(b).getSumSquaredErrors();
            explained += (ofLine - 2 * 0.05 * 0.05) / bins.get(b).size() / BINS;
            all += squares;
        }
        assertThat(folded.energy()).isCloseTo(all, within(1e-5));
        assertThat(folded.explainedPower(0.05)).isCloseTo(explained, within(1e-8));
    }

    @Test
    void theMedianVarianceIsOfTheBinsAskedFor() {
        double[] variances = IntStream.of(2, 5, 11)
                .mapToDouble(b -> line(b).getMeanSquareError())
                .sorted()
                .toArray();
        assertThat(folded.medianVariance(new int[] {11, 2, 5})).isCloseTo(variances[1], within(1e-8));
        assertThat(folded.medianVariance(new int[0])).isZero();
    }

    /** A fine bin is a 2048th of the period; its point is the mean phase of its samples with the fit there and their mean distance from it. */
    @Test
    void thePointsAreTheMeansOfFineBins() {
        WeightedPoints points = folded.points(table, ORIGIN);
        double weight = 0;
        for (int p = 0; p < points.size(); p++) {
            int fine = (int) (points.x(p) * 2048);
            List<double[]> own = bins.stream()
                    .flatMap(List::stream)
                    .filter(s -> (int) (s[0] * 2048) == fine)
                    .toList();
            double phase = own.stream().mapToDouble(s -> s[0]).average().orElseThrow();
            double distance = own.stream().mapToDouble(s -> s[1]).average().orElseThrow();
            assertThat(points.x(p)).isCloseTo(phase, within(1e-9));
            assertThat(points.y(p)).isCloseTo(fit.at(phase + ORIGIN) + distance, within(1e-6));
            assertThat(points.weight(p)).isEqualTo(own.size());
            weight += points.weight(p);
        }
        assertThat(weight).isEqualTo(1499);
    }

    /** With ten samples a period every bin of sixteen holds samples in one place or none: there is no slope. */
    @Test
    void samplesInOnePlaceHaveAMeanButNoSlope() {
        double[] few = new double[100];
        Random random = new Random(8);
        for (int i = 0; i < few.length; i++) {
            few[i] = Math.sin(2 * Math.PI * i / 10) + random.nextGaussian();
        }
        Samples samples = Samples.of(few);
        HarmonicFit sine = JointFit.at(List.of(samples), 0.1, 1).channels().get(0);
        FoldedResiduals whole = new FoldedResiduals(FitSamples.of(samples), sine, new FitTable(sine), 0, BINS);
        assertThat(whole.freedom()).isEqualTo(90);
        double energy = 0;
        int empty = 0;
        for (int b = 0; b < BINS; b++) {
            empty += whole.freedom(b) == 0 ? 1 : 0;
            if (whole.freedom(b) == 0) {
                assertThat(whole.mean(b)).isZero();
            }
        }
        for (int place = 0; place < 10; place++) {
            SimpleRegression constant = new SimpleRegression(true);
            for (int i = place; i < 100; i += 10) {
                constant.addData(i, few[i] - sine.at((i - 49.5) * 0.1));
            }
            energy += constant.getTotalSumSquares();
        }
        assertThat(empty).isEqualTo(6);
        assertThat(whole.scatterEnergy()).isCloseTo(energy, within(1e-5));
    }
}
