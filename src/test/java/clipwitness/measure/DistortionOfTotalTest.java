package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Spread;
import clipwitness.fixture.TestRecord;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Distortion over the whole signal, where the amplitudes make a right-angled triangle of whole numbers. */
class DistortionOfTotalTest {
    private static DoubleUnaryOperator withThird(double amplitude) {
        return p -> Math.sin(2 * Math.PI * p) + amplitude * Math.sin(6 * Math.PI * p);
    }

    private static WaveformResult measured(DoubleUnaryOperator shape) {
        return TestRecord.of(shape).sampled(1000, 8, 0.00037).measured();
    }

    /** Sides 4 and 3, hypotenuse 5: 3/4 over the fundamental, 3/5 over the whole. */
    @Test
    void aThirdHarmonicOfThreeQuartersIs75PercentOfTheFundamentalAnd60PercentOfTheWhole() {
        WaveformResult result = measured(withThird(0.75));
        assertThat(Values.value(result, WaveformQuantity.THD)).isCloseTo(75, within(1e-6));
        assertThat(Values.value(result, WaveformQuantity.THD_OF_TOTAL)).isCloseTo(60, within(1e-6));
    }

    /** Harmonics 3 to 19 of the square wave, 1 / k each: sqrt(1 - 1 / sum of 1 / k² over odd k from 1 to 19) = 41.56 %. */
    @Test
    void aSquareWaveHas41Point56PercentOfTheWholeWith20Harmonics() {
        assertThat(Values.value(measured(p -> p < 0.5 ? 1 : -1), WaveformQuantity.THD_OF_TOTAL))
                .isCloseTo(41.56, within(0.05));
    }

    @Test
    void whereTheDistortionIsABoundThisIsOneToo() {
        Measured figure = TestRecord.of(TestRecord.SINE)
                .sampled(300, 6.37, 0)
                .noisy(0.02, 0, 1)
                .measured()
                .get(WaveformQuantity.THD_OF_TOTAL);
        assertThat(figure.asValue().orElseThrow().isUpperBound()).isTrue();
    }

    /** Scatter of 200 values is known to 5 %, one standard deviation: the bounds are three of them. */
    @Test
    void theFiguresOf200NoisyRecordsScatterAsStated() {
        Spread spread = new Spread();
        for (int record = 0; record < 200; record++) {
            spread.add(TestRecord.of(withThird(0.75))
                    .sampled(300, 6.37, record * 0.61803)
                    .noisy(0.02, 0, record)
                    .measured()
                    .get(WaveformQuantity.THD_OF_TOTAL));
        }
        assertThat(spread.overStated()).isBetween(0.85, 1.15);
    }
}
