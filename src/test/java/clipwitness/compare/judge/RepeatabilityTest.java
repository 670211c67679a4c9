package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Series;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.job.Bench;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Nearly clean to half gain, then steeply rising: the knob alone may have made what little distortion there is at 50 %. */
class RepeatabilityTest {
    private static final double[] GAINS = {0, 25, 50, 75, 100};
    private static final double[] THD = {0.1, 0.12, 0.14, 4, 9};

    @Test
    void aDistortionThatTheKnobMayHaveMadeIsABound() {
        Repeatability repeatability = repeatability();
        assertThat(value(repeatability.figure(setting(2), WaveformQuantity.THD)))
                .satisfies(v -> {
                    assertThat(v.isUpperBound()).isTrue();
                    assertThat(v.shown()).isGreaterThan(2 * v.number());
                });
        assertThat(value(repeatability.figure(setting(3), WaveformQuantity.THD)).isUpperBound())
                .isFalse();
        assertThat(value(repeatability.figure(setting(0), WaveformQuantity.THD)).isUpperBound())
                .as("an end stop")
                .isFalse();
    }

    /** No noise hides the distortion at 50 %: where it reaches 1 % lies along the curve, with what the knob leaves open. */
    @Test
    void theKnobMovesACrossingButMakesNoBracketOfIt() {
        Series series = new GainSeries(catalogue(), repeatability(), OptionalDouble.of(0.1))
                .of(List.of("a"))
                .get(0);
        assertThat(series.onsetGain().get(0).gainPercent().asValue())
                .hasValueSatisfying(v -> assertThat(v.number()).isBetween(50.0, 75.0));
    }

    private static Measured.Value value(Measured measured) {
        return measured.asValue().orElseThrow();
    }

    private static StateAtCondition setting(int index) {
        return catalogue().of("a").get(index);
    }

    private static Repeatability repeatability() {
        return new Repeatability(catalogue(), bench(0.05));
    }

    private static Bench bench(double knob) {
        OptionalDouble none = OptionalDouble.empty();
        return new Bench(none, none, none, none, List.of(), 0.03, knob, 0.005);
    }

    private static Catalogue catalogue() {
        List<CaptureResult> captures = new ArrayList<>();
        for (int i = 0; i < GAINS.length; i++) {
            captures.add(MadeUpCapture.ordinary("a", GAINS[i])
                    .with(WaveformQuantity.THD, THD[i], 0.005)
                    .done());
        }
        return Catalogue.of(captures, s -> s);
    }

    /**
     * Below 0.1 % at the end stop, 3.4 % at 25 %, 12.2 % at half gain: the chords rise by 0.13 to 0.14 and by 0.35 points for 1 %, 0.34 and
     * 0.90 dB of 3.4 %. A knob of 0.4 % makes no more than 0.36 dB of it, though noise hides the figure below.
     */
    @Test
    void aCleanNeighbourTellsHowSteepTheDistortionRises() {
        double[] thd = {0.05, 3.4, 12.2, 20, 26};
        List<CaptureResult> captures = new ArrayList<>();
        for (int i = 0; i < GAINS.length; i++) {
            Measured.Value value = Measured.withNoise(thd[i], Unit.PERCENT, 0.02);
            captures.add(MadeUpCapture.ordinary("a", GAINS[i])
                    .with(WaveformQuantity.THD, i == 0 ? value.asUpperBound() : value)
                    .done());
        }
        Catalogue catalogue = Catalogue.of(captures, s -> s);
        assertThat(new Repeatability(catalogue, bench(0.004))
                        .of(catalogue.of("a").get(1), ItemValue.THD))
                .singleElement()
                .satisfies(c -> assertThat(c.standardUncertainty()).isBetween(0.4 * 0.34, 0.4 * 0.9));
    }
}
