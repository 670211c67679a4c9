package clipwitness.measure.junction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.fixture.Curves;
import clipwitness.fixture.Said;
import clipwitness.fixture.SyntheticTrace;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JunctionMeasurementTest {
    private static SyntheticTrace silicon(long seed) {
        return new SyntheticTrace(seed).sweep(SyntheticTrace::silicon, 1e-6, 12e-3, 120, 3e-4);
    }

    private static void assertHolds(Measured measured, double truth) {
        double u = measured.expandedUncertainty().orElseThrow();
        assertThat(measured.value().orElseThrow()).isCloseTo(truth, within(1.5 * u)); // k = 3
    }

    /** n 1.75, Is 2.5 nA and Rs 0.6 Ω are those that made the trace. */
    @ParameterizedTest
    @CsvSource({"1, 1, 1", "2, -1, -1", "3, 1, -1", "4, -1, 1"})
    void fitHoldsTheTruthInEitherPolarityAndSignOfCurrent(long seed, double volts, double amperes) {
        JunctionResult result = JunctionMeasurement.of(silicon(seed).curve(volts, amperes), new Temperature(25, 0));
        JunctionFit fit = result.fit().orElseThrow();
        assertHolds(fit.ideality(), 1.75);
        assertHolds(fit.saturationCurrent(), 2.5e-9);
        assertHolds(fit.seriesResistance(), 0.6);
        assertThat(Said.reason(fit.shuntResistance().reason())).contains("the data show no shunt");
        assertHolds(result.atOneMilliampere(), 0.5805750078735674); // shockley-forward-voltages.csv
    }

    /** 93 to 97.5 % is asked of intervals; of 100 traces that is 88 to 100 within chance. */
    @Test
    void intervalsOfTheFitAreHonest() {
        int hits = 0;
        for (long seed = 0; seed < 100; seed++) {
            Measured n = silicon(seed).measured().fit().orElseThrow().ideality();
            hits += Math.abs(n.value().orElseThrow() - 1.75)
                            <= n.expandedUncertainty().orElseThrow()
                    ? 1
                    : 0;
        }
        assertThat(hits).isBetween(88, 99);
    }

    /** n goes with 1 / T: 1 K of 298.15 K is 1.75 / 298.15 = 0.00587. */
    @Test
    void theIdealityIsKnownNoBetterThanTheTemperature() {
        Measured.Value n = JunctionMeasurement.of(silicon(1).curve(1, 1), new Temperature(25, 1))
                .fit()
                .orElseThrow()
                .ideality()
                .asValue()
                .orElseThrow();
        assertThat(n.budget())
                .filteredOn(c -> c.source() == Source.TEMPERATURE)
                .singleElement()
                .satisfies(c -> assertThat(c.standardUncertainty()).isCloseTo(0.00587, within(1e-4)));
    }

    @Test
    void unsortedPointsGiveTheSameFit() {
        Map<String, Measured> sorted = silicon(5).measured().fit().orElseThrow().figures();
        Map<String, Measured> shuffled =
                silicon(5).shuffled().measured().fit().orElseThrow().figures();
        assertThat(shuffled.get("ideality").value().orElseThrow())
                .isCloseTo(sorted.get("ideality").value().orElseThrow(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0, 2e-8", "3e-8, 2e-9", "-3e-8, 2e-9", "0, 0"})
    void fortyPointsOfFloorChangeNothingBeyondTheUncertainty(double level, double noise) {
        JunctionResult bare = silicon(6).measured();
        JunctionResult floored =
                silicon(6).floor(0, 0.25, 40, level, noise).shuffled().measured();
        for (String name : new String[] {"saturationCurrent", "ideality", "seriesResistance"}) {
            Measured a = bare.fit().orElseThrow().figures().get(name);
            Measured b = floored.fit().orElseThrow().figures().get(name);
            assertThat(b.value().orElseThrow())
                    .isCloseTo(
                            a.value().orElseThrow(),
                            within(a.expandedUncertainty().orElseThrow()));
        }
        assertThat(floored.atOneMilliampere().value().orElseThrow())
                .isCloseTo(bare.atOneMilliampere().value().orElseThrow(), within(1e-12));
    }

    @Test
    void voltagesBeyondTheTraceAreRefusedNotExtrapolated() {
        JunctionResult result = new SyntheticTrace(7)
                .sweep(SyntheticTrace::silicon, 5e-5, 5e-3, 60, 1e-4)
                .measured();
        assertThat(Said.reason(result.forwardVoltages().get(0).voltage().reason())
                        .orElseThrow())
                .startsWith("the curve begins at 50");
        assertThat(Said.reason(result.forwardVoltages().get(3).voltage().reason())
                        .orElseThrow())
                .startsWith("the curve ends at 5");
    }

    @Test
    void aCurveOf18NanoamperesFrom0To5VoltsIsFloor() {
        JunctionResult result =
                new SyntheticTrace(8).floor(0, 5, 200, 1.8e-8, 1e-11).measured();
        assertThat(result.fit()).isEmpty();
        assertThat(Said.reason(result.refusal()).orElseThrow())
                .contains("never leaves the instrument's floor (at most 18.0");
    }

    @Test
    void anOpenLeadIsNamed() {
        assertThat(Said.reason(
                        new SyntheticTrace(9).floor(0, 5, 100, 0, 0).measured().refusal()))
                .hasValue("no current flows at any voltage: an open lead or an open device");
        assertThat(new SyntheticTrace(9).floor(-5, 5, 200, 0, 1e-8).measured().fit())
                .isEmpty();
    }

    @Test
    void aResistorIsNamedWithItsResistance() {
        JunctionResult result =
                new SyntheticTrace(10).sweep(i -> 470 * i, 1e-5, 1e-2, 80, 1e-3).measured();
        assertThat(Said.reason(result.refusal()).orElseThrow())
                .matches("the current is proportional to the voltage: a resistor of 4(69|70|71).Ω, no junction");
        assertThat(result.atOneMilliampere().value().orElseThrow()).isCloseTo(0.47, within(0.005));
    }

    /** Sweeps that lie 4 mV apart at every current. */
    @Test
    void retraceGapIsTheDistanceOfTheSweeps() {
        JunctionResult result = new SyntheticTrace(11)
                .sweep(SyntheticTrace::silicon, 1e-6, 1e-2, 90, 0)
                .back(-0.004)
                .measured();
        assertThat(result.retraceGap().value().orElseThrow()).isCloseTo(0.004, within(2e-5));
        assertThat(Said.reason(silicon(12).measured().retraceGap().reason())).contains("the curve has no sweep back");
    }

    /** Two sweeps 4 mV apart: the truth is anywhere between them, 4 mV / sqrt 12 = 1.155 mV, and the reading half way. */
    @Test
    void sweepsThatLieApartPutTheirDistanceOnAReading() {
        Measured.Value reading = new SyntheticTrace(11)
                .sweep(SyntheticTrace::silicon, 1e-6, 1e-2, 90, 0)
                .back(-0.004)
                .measured()
                .atOneMilliampere()
                .asValue()
                .orElseThrow();
        assertThat(reading.number()).isCloseTo(0.5805750078735674 - 0.002, within(2e-5));
        assertThat(reading.budget())
                .filteredOn(c -> c.source() == Source.REPEATABILITY)
                .singleElement()
                .satisfies(c -> assertThat(c.standardUncertainty()).isCloseTo(1.155e-3, within(1e-5)));
    }

    /** T13 of trade-facts.csv: 103.53 mV a decade at n = 1.75 and 25 °C; Rs adds 0.6 Ω times 90 µA. */
    @Test
    void decadeSlopeIsThatOfTheIdealityAndTheTemperature() {
        JunctionResult result = new SyntheticTrace(13)
                .sweep(SyntheticTrace::silicon, 1e-6, 1e-2, 200, 0)
                .measured();
        assertThat(result.decadeSlope().from()).isEqualTo(1e-5);
        assertThat(result.decadeSlope().voltage().value().orElseThrow())
                .isCloseTo(0.10352886 + 0.6 * 9e-5, within(5e-5));
    }

    /** Without series resistance the slope is (I + Is) / nVt, so that 10 % to 90 % is ln 9 times nVt. */
    @Test
    void kneeOfAnIdealJunctionIsLn9TimesTheThermalVoltage() {
        JunctionResult result = new SyntheticTrace(14)
                .sweep(i -> 0.025692579121085846 * Math.log1p(i / 1e-14), 1e-7, 1e-2, 100, 0)
                .measured();
        assertThat(result.kneeWidth().value().orElseThrow())
                .isCloseTo(Math.log(9) * 0.025692579121085846, within(1e-6));
    }

    @Test
    void pointsAtTheCurrentLimitDoNotCount() {
        JunctionResult result = silicon(15).floor(0.7, 5, 80, 12e-3, 1e-6).measured();
        assertHolds(result.fit().orElseThrow().ideality(), 1.75);
    }

    @Test
    void leakageIsReadAtStatedVoltages() {
        JunctionResult result = silicon(16).floor(-6, -0.5, 12, -4e-7, 0).measured();
        assertThat(result.leakages()).hasSize(2);
        assertThat(result.leakages().get(0).voltage()).isEqualTo(-1);
        assertThat(result.leakages().get(0).current().value().orElseThrow()).isCloseTo(-4e-7, within(1e-12));
    }

    /** Curves of no sense at all: whatever an export holds, it is measured or refused. */
    @Test
    void anythingIsMeasuredOrRefused() {
        Random random = new Random(17);
        for (int round = 0; round < 400; round++) {
            int count = random.nextInt(40);
            double[] volts = new double[count];
            double[] amperes = new double[count];
            double range = Math.pow(10, random.nextInt(14) - 10);
            for (int i = 0; i < count; i++) {
                volts[i] = random.nextInt(5) == 0 ? Double.NaN : Math.rint(random.nextGaussian() * 20) / 20;
                amperes[i] = random.nextInt(4) == 0 ? range : random.nextGaussian() * range;
            }
            JunctionResult result =
                    JunctionMeasurement.of(Curves.of(Samples.of(volts), Samples.of(amperes)), new Temperature(25, 0));
            assertMakesSense(result);
        }
    }

    /** What is measured lies among the points and is finite; what is not has its reason. */
    private static void assertMakesSense(JunctionResult result) {
        double highest =
                result.volts().size() == 0 ? 0 : Math.max(0, result.volts().maximum());
        for (ForwardVoltage f : result.forwardVoltages()) {
            assertThat(f.voltage().value().orElse(0)).isBetween(0.0, highest);
            assertThat(Said.reason(f.voltage().reason()).orElse("measured")).isNotBlank();
        }
        if (result.fit().isEmpty()) {
            assertThat(Said.reason(result.refusal()).orElseThrow()).isNotBlank();
            assertThat(result.kneeWidth().reason()).isEqualTo(result.refusal());
            return;
        }
        assertThat(result.refusal()).isEmpty();
        JunctionFit fit = result.fit().get();
        assertThat(fit.ideality().value().orElseThrow()).isPositive();
        assertThat(fit.saturationCurrent().value().orElseThrow()).isPositive();
        assertThat(fit.seriesResistance().value().orElseThrow()).isNotNegative();
        assertThat(fit.scatter())
                .isLessThan(0.1 * (highest - Math.min(0, result.volts().minimum())));
        assertThat(fit.model().voltageAt(fit.currents().maximum())).isFinite().isPositive();
    }
}
