package clipwitness.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SamplesTest {
    @Test
    void gapsAreCountedAndAreNeitherSmallestNorLargest() {
        Samples samples = Samples.adopted(new double[] {Double.NaN, 2, -3, Double.NaN, 1});
        assertThat(samples.gaps()).isEqualTo(2);
        assertThat(samples.minimum()).isEqualTo(-3);
        assertThat(samples.maximum()).isEqualTo(2);
    }

    @Test
    void infiniteValuesAreNoSamples() {
        for (double infinite : new double[] {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Samples.of(1, infinite, Double.NaN))
                    .withMessage("samples must be finite or gaps but one is " + infinite);
            assertThatIllegalArgumentException().isThrownBy(() -> Samples.of(infinite));
        }
    }

    @Test
    void gapsAloneHaveNoSmallestValue() {
        Samples samples = Samples.of(Double.NaN, Double.NaN);
        assertThat(samples.gaps()).isEqualTo(2);
        assertThatIllegalArgumentException().isThrownBy(samples::minimum).withMessage("no sample has a value");
        assertThatIllegalArgumentException().isThrownBy(() -> Samples.of().maximum());
    }

    @Test
    void valuesCopiedInDoNotChangeWithTheirArray() {
        double[] values = {1, 2};
        Samples samples = Samples.of(values);
        values[0] = 5;
        assertThat(samples).isEqualTo(Samples.of(1, 2)).isNotEqualTo(Samples.of(5, 2));
    }
}
