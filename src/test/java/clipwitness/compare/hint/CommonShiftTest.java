package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Weighted means: the weight of a value is 1 / U², and the mean is known to the root of 1 over the sum of the weights. */
class CommonShiftTest {
    private static Optional<CommonShift> of(double roughness, Shift... shifts) {
        return CommonShift.of(Stream.of(shifts).map(Optional::of).toList(), roughness);
    }

    /** Weights of 100 and 11.11: (100 + 1.3 · 11.11) / 111.11 = 1.03 dB down, known to 0.0949 dB. */
    @Test
    void theBetterKnownShiftWeighsMore() {
        CommonShift common = of(0.5, new Shift(-1, 0.1), new Shift(-1.3, 0.3)).orElseThrow();
        assertThat(common.mean()).isCloseTo(-1.03, within(1e-9));
        assertThat(common.expanded()).isCloseTo(0.09487, within(1e-5));
        assertThat(common.least()).isEqualTo(-1.3);
        assertThat(common.most()).isEqualTo(-1);
        assertThat(common.ofOrder(7))
                .isEqualTo(new CommonShift(7, common.mean(), common.expanded(), common.least(), common.most()));
    }

    /** 0.01 dB counts as 0.05 dB. */
    @Test
    void noShiftIsKnownBetterThanTheBenchDrifts() {
        CommonShift common = of(0.5, new Shift(1, 0.01), new Shift(1.2, 0.05)).orElseThrow();
        assertThat(common.mean()).isCloseTo(1.1, within(1e-12));
        assertThat(common.expanded()).isCloseTo(0.05 / Math.sqrt(2), within(1e-12));
    }

    /** Two shifts known alike lie half their distance off their mean. */
    @Test
    void shiftsThatLieApartByMoreThanUncertaintyAndRoughnessHaveNoneInCommon() {
        assertThat(of(0.2, new Shift(0, 0.1), new Shift(0.58, 0.1))).isPresent();
        assertThat(of(0.2, new Shift(0, 0.1), new Shift(0.62, 0.1))).isEmpty();
        assertThat(of(0.2, new Shift(0.62, 0.1), new Shift(0, 0.1))).isEmpty();
    }

    @Test
    void aSettingWithoutAShiftLeavesNoneInCommon() {
        assertThat(CommonShift.of(List.of(Optional.of(new Shift(1, 0.1)), Optional.empty()), 1))
                .isEmpty();
    }
}
