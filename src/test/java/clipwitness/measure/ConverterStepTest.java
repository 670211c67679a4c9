package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.TestRecord;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a coarse converter that no noise dithers does to a figure lies within the figure's stated uncertainty. */
class ConverterStepTest {
    private static final double STEP = 0.05;

    /** A sine of amplitude 1 dwells 14.36 % of its period near its peak, wherever it lies against the codes. */
    @Test
    void theDwellOfASineOf40CodesIsOffByNoMoreThanItSays() {
        double[] errors = new double[40];
        double[] stated = new double[errors.length];
        for (int i = 0; i < errors.length; i++) {
            double offset = STEP * i / errors.length;
            WaveformResult result = TestRecord.of(p -> offset + TestRecord.SINE.applyAsDouble(p))
                    .noisy(0, STEP, 1)
                    .measured();
            errors[i] = Math.abs(Values.value(result, WaveformQuantity.DWELL_UP) - 14.36);
            stated[i] = Values.uncertainty(result, WaveformQuantity.DWELL_UP);
        }
        long held = IntStream.range(0, errors.length)
                .filter(i -> errors[i] <= stated[i])
                .count();
        assertThat(held).isGreaterThanOrEqualTo(38); // 95 % of 40
        assertThat(DoubleStream.of(stated).max().orElseThrow())
                .isLessThan(10 * DoubleStream.of(errors).max().orElseThrow());
    }
}
