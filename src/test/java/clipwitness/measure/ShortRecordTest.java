package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.ClippedWave;
import clipwitness.fixture.TestRecord;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A record of 1.3 periods cannot tell twenty harmonics from another frequency: it is refused as too short, or measured with the doubt that it
 * is short, and nothing else happens.
 */
class ShortRecordTest {
    static Stream<ClippedWave> waves() {
        return Stream.concat(ClippedWave.tuned(), ClippedWave.heldOut());
    }

    @ParameterizedTest
    @MethodSource("waves")
    void aRecordOf1Point3PeriodsIsNamedAsShort(ClippedWave wave) {
        assertThat(IntStream.range(0, 6)
                        .mapToObj(i -> TestRecord.of(wave::outputAt)
                                .sampled(187.3, 1.3, 0.17 * i)
                                .noisy(0.004 * i, 2.0 / 256, i)
                                .measured()))
                .allSatisfy(result ->
                        assertThat(result.doubts()).extracting(Doubt::code).contains(DoubtCode.FEW_PERIODS));
    }
}
