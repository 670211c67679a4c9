package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RootTest {
    /** The root of cos x = x, 0.739085133215160641655... (OEIS A003957). */
    private static final double DOTTIE = 0.7390851332151607;

    @Test
    void theRootOfAFallingAndOfARisingFunctionIsFoundToThirteenDigits() {
        assertThat(Root.between(x -> Math.cos(x) - x, 0, 1)).hasValueCloseTo(DOTTIE, within(1e-13));
        assertThat(Root.between(x -> x - Math.cos(x), 0, 1)).hasValueCloseTo(DOTTIE, within(1e-13));
    }

    @Test
    void aRootAtAnEndIsThatEnd() {
        assertThat(Root.between(x -> x, 0, 1)).hasValue(0);
        assertThat(Root.between(x -> x - 1, 0, 1)).hasValue(1);
    }

    @Test
    void thereIsNoneWithoutAChangeOfSignOrWithoutAValueAtAnEnd() {
        assertThat(Root.between(x -> x * x + 1, -1, 1)).isEmpty();
        assertThat(Root.between(Math::sqrt, -1, 1)).isEmpty();
        assertThat(Root.between(x -> -Math.sqrt(x), 1, -1)).isEmpty();
    }
}
