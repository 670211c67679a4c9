package clipwitness.compare.rail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.Decision;
import clipwitness.compare.result.RailResult;
import clipwitness.fault.InputException;
import clipwitness.fixture.TestJob;
import clipwitness.measure.Measured;
import clipwitness.reason.ComparisonReason;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Meter readings worked out by hand. A maker's accuracy with so many digits is a bound, evenly distributed inside it: u = a / sqrt 3 (JCGM 100:2008,
 * 4.3.7).
 */
class RailJudgeTest {
    private static final String METER = "bench: {meter-accuracy: 0.5 %}\n";

    @TempDir
    Path folder;

    private List<RailResult> judged(String lines) throws IOException, InputException {
        return new RailJudge(TestJob.in(folder).sheet(lines).read().sheet()).all();
    }

    private static double expanded(Measured measured) {
        return measured.expandedUncertainty().orElseThrow();
    }

    @Test
    void aReadingErrsByTheAccuracyAndOneDigit() throws IOException, InputException {
        RailResult rail = judged(METER + "rails: [{name: supply, expected: 16 V, received: 16.1 V}]\n")
                .get(0);
        // bound 0.5 % of 16.1 V and 0.1 V: 0.1805 V; U = 2 * 0.1805 / 1.73205
        assertThat(expanded(rail.reading())).isCloseTo(0.20842, within(1e-5));
        // deviation 0.1 V of 16 V; U = 0.20842 of 16
        assertThat(rail.deviation().value().orElseThrow()).isCloseTo(0.625, within(1e-12));
        assertThat(expanded(rail.deviation())).isCloseTo(1.30264, within(1e-5));
        assertThat(rail.decision()).isEqualTo(Decision.PASS);
    }

    @Test
    void theDigitIsThatOfTheReadingAsWritten() throws IOException, InputException {
        RailResult rail = judged(METER + "rails: [{name: supply, expected: 16 V, received: 16.10 V}]\n")
                .get(0);
        assertThat(expanded(rail.reading())).isCloseTo(2 * (0.0805 + 0.01) / Math.sqrt(3), within(1e-9));
    }

    @Test
    void aDeadRailFails() throws IOException, InputException {
        List<RailResult> rails =
                judged(METER + "rails: [{name: boosted, expected: 16 V, received: 16.1 V, original: 12.4 V}]\n");
        assertThat(rails).extracting(RailResult::decision).containsExactly(Decision.PASS, Decision.FAIL);
        assertThat(rails.get(1).deviation().value().orElseThrow()).isCloseTo(-22.5, within(1e-12));
    }

    /** -5.1 V is 0.593 of -8.6 V: a negative rail that is too weak lies below its expectation, as a positive one does. */
    @Test
    void aWeakNegativeRailIsBelowItsExpectation() throws IOException, InputException {
        RailResult rail = judged(METER + "rails: [{name: negative, expected: -8.6 V, received: -5.10 V}]\n")
                .get(0);
        assertThat(rail.deviation().value().orElseThrow()).isCloseTo(-40.698, within(1e-3));
        assertThat(expanded(rail.deviation())).isPositive();
        assertThat(rail.decision()).isEqualTo(Decision.FAIL);
    }

    @Test
    void aCoarseMeterNearTheLimitDecidesNothing() throws IOException, InputException {
        RailResult rail = judged(METER + "rails: [{name: supply, expected: 9 V, received: 9.1 V}]\n")
                .get(0);
        assertThat(rail.decision()).isEqualTo(Decision.UNDECIDED); // 1.1 % with U = 1.9 %, limit 2 %
    }

    @Test
    void aRailCanHaveItsOwnTolerance() throws IOException, InputException {
        String current = "rails: [{name: current, expected: 8 mA, tolerance: 20 %, received: 9.1 mA}]\n";
        RailResult rail = judged(METER + current).get(0);
        assertThat(rail.limit()).isEqualTo(20);
        assertThat(rail.decision()).isEqualTo(Decision.PASS);
    }

    @Test
    void withoutExpectationAReadingIsComparedWithTheOneBeforeAndTheAccuracyCancels()
            throws IOException, InputException {
        List<RailResult> rails = judged(METER + "rails: [{name: bias, received: 4.50 V, original: 4.52 V}]\n");
        assertThat(rails.get(0).decision()).isEqualTo(Decision.DESCRIBED);
        assertThat(rails.get(0).deviation().reason().orElseThrow().code())
                .isEqualTo(ComparisonReason.NOTHING_TO_COMPARE_READING);
        assertThat(rails.get(1).deviation().value().orElseThrow()).isCloseTo(100 * 0.02 / 4.5, within(1e-9));
        // two digits of 0.01 V: U = 2 * 0.01 * sqrt 2 / sqrt 3 = 0.016330 V, of 4.5 V
        assertThat(expanded(rails.get(1).deviation())).isCloseTo(0.36289, within(1e-5));
        assertThat(rails.get(1).decision()).isEqualTo(Decision.PASS);
    }

    @Test
    void nothingIsAPercentageOfZero() throws IOException, InputException {
        List<RailResult> rails = judged(METER + "rails: [{name: offset, received: 0 V, original: 0.1 V}]\n");
        assertThat(rails.get(1).deviation().reason().orElseThrow().code()).isEqualTo(ComparisonReason.READING_OF_ZERO);
    }

    @Test
    void aReadingThatShouldBeZeroIsPrintedAndNotJudged() throws IOException, InputException {
        List<RailResult> rails =
                judged(METER + "rails: [{name: offset, expected: 0 V, received: 2 mV, original: 3 mV}]\n");
        assertThat(rails.get(1).reading().number()).isEqualTo(0.003);
        assertThat(rails.get(1).deviation().reason().orElseThrow().code())
                .isEqualTo(ComparisonReason.EXPECTATION_OF_ZERO);
        assertThat(rails.get(1).decision()).isEqualTo(Decision.DESCRIBED);
    }

    @Test
    void anOffsetOfAFewDigitsHasNoPercentage() throws IOException, InputException {
        List<RailResult> rails = judged(METER + "rails: [{name: offset, received: 2 mV, original: 1 mV}]\n");
        assertThat(rails.get(1).deviation().reason().orElseThrow().code())
                .isEqualTo(ComparisonReason.READING_OF_FEW_DIGITS);
    }
}
