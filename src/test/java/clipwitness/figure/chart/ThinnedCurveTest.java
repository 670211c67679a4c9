package clipwitness.figure.chart;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ThinnedCurveTest {
    private static final int MILLION = 1_000_000;

    @Test
    void aShortCurveIsDrawnPointByPoint() {
        assertThat(ThinnedCurve.indices(Samples.of(3, 1, 2))).containsExactly(0, 1, 2);
    }

    @Test
    void aMillionSamplesBecomeAtMostTwoThousandPointsInOrder() {
        int[] indices = ThinnedCurve.indices(sine());
        assertThat(indices.length).isBetween(1000, 2000);
        assertThat(indices).isSorted().doesNotHaveDuplicates();
        assertThat(indices[0]).isZero();
        assertThat(indices[indices.length - 1]).isEqualTo(MILLION - 1);
    }

    /** A spike of one sample is what an envelope must not lose. */
    @Test
    void aSpikeOfOneSampleStays() {
        double[] flat = new double[MILLION];
        flat[654_321] = 5;
        flat[123_456] = -7;
        assertThat(ThinnedCurve.indices(Samples.of(flat))).contains(654_321, 123_456);
    }

    @Test
    void extremesOfEveryStretchStay() {
        Samples wave = sine();
        int[] indices = ThinnedCurve.indices(wave);
        double highest = Arrays.stream(indices).mapToDouble(wave::at).max().orElseThrow();
        double lowest = Arrays.stream(indices).mapToDouble(wave::at).min().orElseThrow();
        assertThat(highest).isEqualTo(wave.maximum());
        assertThat(lowest).isEqualTo(wave.minimum());
    }

    @Test
    void gapsDoNotHideExtremes() {
        double[] values = new double[MILLION];
        values[0] = Double.NaN;
        values[7] = 9;
        assertThat(ThinnedCurve.indices(Samples.of(values))).contains(7);
    }

    private static Samples sine() {
        double[] values = new double[MILLION];
        Arrays.setAll(values, i -> Math.sin(i * 0.013) + 1e-4 * (i % 17));
        return Samples.of(values);
    }
}
