package clipwitness.figure.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ScaleTest {
    @Test
    void halfwayOnALogarithmicScaleIsTheGeometricMean() {
        assertThat(new Scale.Logarithmic(1, 100).share(10)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void halfwayOnALinearScaleIsTheMean() {
        assertThat(new Scale.Linear(-1, 3).share(1)).isEqualTo(0.5);
    }

    @Test
    void aScaleNeedsItsEndsInOrder() {
        assertThatThrownBy(() -> new Scale.Linear(1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Scale.Logarithmic(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Scale.Linear(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
