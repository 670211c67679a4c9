package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CodeStepTest {
    private static final double STEP = 0.0625;
    private static final double[] ERRORS = new Random(3).doubles(100, -1, 1).toArray();

    /** A noisy sine through a converter of step 1/16, each value written with an error of up to a share of the step. */
    private static Samples written(double share) {
        Random random = new Random(1);
        return Samples.of(IntStream.range(0, 2_000)
                .mapToDouble(i -> Math.rint((2 * Math.sin(i / 50.0) + 0.05 * random.nextGaussian()) / STEP))
                .map(code -> STEP * (code + share * ERRORS[(int) code + ERRORS.length / 2]))
                .toArray());
    }

    @Test
    void valuesWrittenToATwentiethOfAStepShowIt() {
        assertThat(CodeStep.of(written(0)).orElseThrow()).isCloseTo(STEP, within(1e-12));
        assertThat(CodeStep.of(written(0.05)).orElseThrow()).isCloseTo(STEP, within(1e-3 * STEP));
    }

    /** Gaps are then off by up to a fifth: some are no whole multiple of anything to a tenth. */
    @Test
    void valuesOffByANinthOfAStepShowNone() {
        assertThat(CodeStep.of(written(0.11))).isEmpty();
    }

    @Test
    void valuesThatFollowNoStepShowNone() {
        Random random = new Random(2);
        assertThat(CodeStep.of(Samples.of(random.doubles(500).toArray()))).isEmpty();
        assertThat(CodeStep.of(Samples.of(1, 1, 1))).isEmpty();
    }

    /** Between codes 0, 3, 7, 10, 14, 17 lie 3 and 4 steps: the smallest distance is three of them. */
    @Test
    void distancesOfThreeAndFourCodesShowAStepOfOne() {
        double[] codes = {0, 3, 7, 10, 14, 17, 21, 24};
        double[] values = new double[800];
        for (int i = 0; i < values.length; i++) {
            values[i] = 0.4 + 0.025 * codes[i * 5 % codes.length];
        }
        assertThat(CodeStep.of(Samples.of(values)).orElseThrow()).isCloseTo(0.025, within(1e-9));
    }
}
