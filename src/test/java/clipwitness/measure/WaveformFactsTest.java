package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.TestRecord;
import clipwitness.quantity.Unit;
import clipwitness.signal.ReferenceRow;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Textbook waves against waveform-facts.csv: closed forms of their Fourier series. */
class WaveformFactsTest {
    private static final int SAMPLES_PER_CYCLE = 1000;

    /** What harmonics above the twentieth add where a wave jumps, and bins of the mean cycle that hold the jump. */
    private static final double OF_A_JUMP = 1e-3;

    /** A polynomial rounds a sharp crest, and the bin beside a jump is left out of it. */
    private static final double OF_A_SHARP_CREST = 9e-3;

    private static final Map<String, DoubleUnaryOperator> SHAPES = Map.of(
            "sine", TestRecord.SINE,
            "square", p -> p < 0.5 ? 1 : -1,
            "triangle", p -> 2 / Math.PI * Math.asin(Math.sin(2 * Math.PI * p)),
            "sawtooth", p -> 2 * p - 1,
            "half-wave rectified sine", p -> Math.max(0, TestRecord.SINE.applyAsDouble(p)),
            "full-wave rectified sine", p -> Math.abs(Math.sin(Math.PI * p)));

    /** Amplitude of harmonic k over the fundamental, k from 2: each series is given in any handbook. */
    private static final Map<String, IntToDoubleFunction> SERIES = Map.of(
            "sine", k -> 0,
            "square", k -> k % 2 == 0 ? 0 : 1.0 / k,
            "triangle", k -> k % 2 == 0 ? 0 : 1.0 / (k * k),
            "sawtooth", k -> 1.0 / k,
            "half-wave rectified sine", k -> k % 2 == 0 ? 4 / (Math.PI * (k * k - 1)) : 0,
            "full-wave rectified sine", k -> 3.0 / (4 * k * k - 1));

    static Stream<ReferenceRow> waves() {
        return ReferenceRow.of(WaveformFactsTest.class, "waveform-facts.csv");
    }

    /** Rows that state the figures with the mean removed, as the program measures them. */
    static Stream<ReferenceRow> swings() {
        return waves().filter(row -> row.number("mean") == 0);
    }

    private static WaveformResult measured(ReferenceRow row) {
        return TestRecord.of(SHAPES.get(row.text("waveform")))
                .sampled(SAMPLES_PER_CYCLE, 8, 0.00037)
                .measured();
    }

    private static double ofJumps(ReferenceRow row) {
        return Set.of("square", "sawtooth").contains(row.text("waveform")) ? OF_A_JUMP : 0;
    }

    /** The rectified sines have corners such as the triangle's. */
    private static SamplingError sampling(ReferenceRow row) {
        String wave = row.text("waveform");
        return SamplingError.of(wave.contains("rectified") ? "triangle" : wave, SAMPLES_PER_CYCLE);
    }

    @ParameterizedTest
    @MethodSource("waves")
    void harmonicsUpToTheTenthAreThoseOfTheSeries(ReferenceRow row) {
        WaveformResult result = measured(row);
        for (int k = 2; k <= 10; k++) {
            assertThat(Values.relative(result, k))
                    .as("H" + k)
                    .isCloseTo(row.number("H" + k + "/H1"), within(sampling(row).harmonic() + ofJumps(row)));
        }
        assertThat(Values.value(result, WaveformQuantity.FUNDAMENTAL))
                .isCloseTo(row.number("H1 amplitude"), within(sampling(row).harmonic() + ofJumps(row)));
    }

    /** The reference sums all harmonics or nine; the sum of 20 is taken from the series. */
    @ParameterizedTest
    @MethodSource("waves")
    void thdIsThatOfTheFirst20Harmonics(ReferenceRow row) {
        IntToDoubleFunction series = SERIES.get(row.text("waveform"));
        double power =
                IntStream.rangeClosed(2, 20).mapToDouble(series).map(h -> h * h).sum();
        assertThat(Math.sqrt(power)).isBetween(row.number("THD_F H2..H10 only"), row.number("THD_F all harmonics"));
        WaveformResult result = measured(row);
        assertThat(Values.value(result, WaveformQuantity.THD) / 100)
                .isCloseTo(
                        Math.sqrt(power),
                        within(2 * sampling(row).thd() + sampling(row).harmonic() + ofJumps(row)));
    }

    /** Sum of 1/k² over odd k from 3 to 19 (all harmonics: sqrt(pi²/8 - 1) = 48.34 %). */
    @Test
    void thdOfASquareWaveWith20HarmonicsIs45Point69Percent() {
        WaveformResult square = TestRecord.of(SHAPES.get("square"))
                .sampled(SAMPLES_PER_CYCLE, 8, 0.0004)
                .measured();
        assertThat(Values.value(square, WaveformQuantity.THD)).isCloseTo(45.69, within(0.03));
        assertThat(square.get(WaveformQuantity.THD).unit()).isEqualTo(Unit.PERCENT);
        assertThat(square.harmonicCount()).isEqualTo(20);
    }

    @ParameterizedTest
    @MethodSource("swings")
    void rmsIsTheReferences(ReferenceRow row) {
        WaveformResult result = measured(row);
        assertThat(Values.value(result, WaveformQuantity.RMS))
                .isCloseTo(row.number("rms without mean"), within(1e-5 + 3 * ofJumps(row)));
    }

    @ParameterizedTest
    @MethodSource("swings")
    void peaksAndCrestFactorAreTheReferences(ReferenceRow row) {
        WaveformResult result = measured(row);
        boolean sharp = sampling(row).crest() > 1e-4;
        double room = sampling(row).crest() + (sharp ? OF_A_SHARP_CREST : 1e-4) + 3 * ofJumps(row);
        assertThat(Values.value(result, WaveformQuantity.PEAK_UP)).isCloseTo(row.number("positive peak"), within(room));
        assertThat(Values.value(result, WaveformQuantity.PEAK_DOWN))
                .isCloseTo(-row.number("negative peak"), within(room));
        assertThat(Values.value(result, WaveformQuantity.CREST_FACTOR))
                .isCloseTo(row.number("crest factor"), within(room / row.number("rms without mean")));
    }

    /** The reference counts both sides against 0.9 of the larger peak: where the peaks differ, only the larger one's side reaches it. */
    @ParameterizedTest
    @MethodSource("swings")
    void dwellIsTheReferences(ReferenceRow row) {
        WaveformResult result = measured(row);
        double up = row.number("positive peak");
        double down = -row.number("negative peak");
        double share = (up >= down ? Values.value(result, WaveformQuantity.DWELL_UP) : 0)
                + (down >= up ? Values.value(result, WaveformQuantity.DWELL_DOWN) : 0);
        assertThat(share / 100)
                .isCloseTo(
                        row.number("dwell share abs(y)>=0.9*max abs(y)"),
                        within(sampling(row).dwell() + 4e-3 + 10 * ofJumps(row)));
    }

    /** 1 - 2 asin(0.9) / pi over two. */
    @Test
    void aSineDwells14Point36PercentOfItsPeriodNearEachPeak() {
        WaveformResult sine = TestRecord.of(SHAPES.get("sine")).measured();
        assertThat(Values.value(sine, WaveformQuantity.DWELL_UP)).isCloseTo(14.36, within(0.01));
        assertThat(Values.value(sine, WaveformQuantity.DWELL_DOWN)).isCloseTo(14.36, within(0.01));
    }
}
