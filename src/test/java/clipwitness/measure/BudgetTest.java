package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Degrees of freedom and coverage factors of JCGM 100:2008, annex G and example H.1. */
class BudgetTest {
    /** Table G.2, column 95.45 %. */
    @ParameterizedTest
    @CsvSource({
        "1, 13.97",
        "2, 4.53",
        "3, 3.31",
        "4, 2.87",
        "5, 2.65",
        "8, 2.37",
        "10, 2.28",
        "15, 2.18",
        "20, 2.13",
        "50, 2.05",
        "100, 2.025",
        "Infinity, 2.000"
    })
    void coverageFactorsOfTableG2(double freedom, double factor) {
        Contribution one = new Contribution(Source.KNOB, 0.3, freedom);
        assertThat(Budget.coverageFactor(List.of(one))).isCloseTo(factor, within(0.006));
    }

    /** Example H.1.6: 25 nm with 18, 9.7 nm with 25.6, 2.9 nm with 50 and 16.6 nm with 2 degrees of freedom among 32 nm: 16.7. */
    @Test
    void effectiveDegreesOfFreedomOfTheEndGaugeOfExampleH1() {
        List<Contribution> budget = List.of(
                new Contribution(Source.NOISE, 25, 18),
                new Contribution(Source.REPEATABILITY, 9.7, 25.6),
                new Contribution(Source.TEMPERATURE, 2.9, 50),
                new Contribution(Source.KNOB, 16.6, 2));
        assertThat(Budget.standardUncertainty(budget)).isCloseTo(32, within(0.5));
        assertThat(Budget.degreesOfFreedom(budget)).isCloseTo(16.7, within(0.1));
    }

    /** Two states that are set by one knob share the estimate of how well it is set: its degrees of freedom do not add up. */
    @Test
    void contributionsOfOneSourceShareTheirDegreesOfFreedom() {
        Contribution knob = new Contribution(Source.KNOB, 0.3, 8);
        assertThat(Budget.degreesOfFreedom(List.of(knob, knob))).isCloseTo(8, within(1e-9));
        assertThat(Budget.bySource(List.of(knob, knob)))
                .containsExactly(new Contribution(Source.KNOB, Math.hypot(0.3, 0.3), 8));
    }
}
