package clipwitness.measure.noise;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.NoiseRecord;
import clipwitness.measure.Measured;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Intervals of noise and hum, k = 2, hold the truth as often as they claim. The Maven profile {@code coverage} runs thousands of records and prints the shares. */
class NoiseCoverageTest {
    private static final int MANY = Integer.getInteger("coverage.records", 2000);
    private static final double[] HUM = {4e-4, 2e-4, 1.2e-4};
    private static final double[] NONE = {};

    /** Long and short records, of five periods of the mains too, quantised and not, with hum and without. */
    static Stream<Arguments> records() {
        return Stream.of(
                Arguments.of("1 s", new NoiseRecord(50_000, 1, 1e-3, 50, HUM, 0)),
                Arguments.of("1 s, mains of 59.9 Hz", new NoiseRecord(50_000, 1, 1e-3, 59.9, HUM, 0)),
                Arguments.of("0.4 s, in codes", new NoiseRecord(48_000, 0.4, 1e-3, 50, HUM, 2e-4)),
                Arguments.of("0.2 s", new NoiseRecord(50_000, 0.2, 3e-4, 50, HUM, 0)),
                Arguments.of("five periods", new NoiseRecord(50_000, 0.1, 2e-4, 50, HUM, 0)),
                Arguments.of("no hum", new NoiseRecord(44_100, 0.3, 1e-3, 50, NONE, 1e-4)));
    }

    @Tag("coverage")
    @ParameterizedTest
    @MethodSource("records")
    void intervalsOfManyRecordsHoldTheTruthAsOftenAsTheyClaim(String name, NoiseRecord record) {
        Map<String, int[]> tallies = tally(record, MANY);
        tallies.forEach((figure, t) -> System.out.printf(
                Locale.ROOT, "%-24s %-10s %6.2f %% of %d%n", name, figure, 100.0 * t[0] / t[1], t[1]));
        tallies.forEach((figure, t) ->
                assertThat(100.0 * t[0] / t[1]).as(name + " " + figure).isBetween(93.0, 97.5));
    }

    /** Of 300 intervals that hold the truth in 95 % of all records, between 90 and 99 % do. */
    @Test
    void intervalsOf300RecordsHoldTheTruthNeitherTooSeldomNorTooOften() {
        tally(new NoiseRecord(20_000, 0.4, 4e-4, 50, HUM, 1e-4), 300)
                .forEach((figure, t) ->
                        assertThat(100.0 * t[0] / t[1]).as(figure).isBetween(90.0, 99.4));
    }

    private static Map<String, int[]> tally(NoiseRecord record, int count) {
        Map<String, int[]> tallies = new LinkedHashMap<>();
        double nominal = Math.rint(record.mains() / 10) * 10;
        for (int seed = 0; seed < count; seed++) {
            NoiseResult result = record.measured(7_000 + seed, OptionalDouble.of(nominal));
            add(tallies, "rms", result.values().get(NoiseFigure.RMS), rms(record, result, NoiseFigure.RMS));
            add(
                    tallies,
                    "aWeighted",
                    result.values().get(NoiseFigure.A_WEIGHTED),
                    rms(record, result, NoiseFigure.A_WEIGHTED));
            for (int k = 1; k <= record.lines().size(); k++) {
                Measured level = result.hum().get(0).lines().get(k - 1).level();
                add(tallies, "line " + k, level, record.lines().at(k - 1) / Math.sqrt(2));
            }
        }
        return tallies;
    }

    private static void add(Map<String, int[]> tallies, String figure, Measured measured, double truth) {
        measured.asValue().ifPresent(v -> {
            int[] t = tallies.computeIfAbsent(figure, f -> new int[2]);
            t[0] += Math.abs(v.number() - truth) <= v.expanded() ? 1 : 0;
            t[1]++;
        });
    }

    /** White noise, the noise of the converter and the lines, each weighted by the published curve. */
    private static double rms(NoiseRecord record, NoiseResult result, NoiseFigure figure) {
        Band band = result.band().orElseThrow();
        double density =
                (record.sigma() * record.sigma() + record.step() * record.step() / 12) / (record.sampleRate() / 2);
        double sum = 0;
        int parts = 20_000;
        double width = (band.high() - band.low()) / parts;
        for (int i = 0; i < parts; i++) {
            sum += density * width * weight(figure, band.low() + (i + 0.5) * width);
        }
        for (int k = 1; k <= record.lines().size(); k++) {
            double a = record.lines().at(k - 1);
            sum += a * a / 2 * weight(figure, k * record.mains());
        }
        return Math.sqrt(sum);
    }

    /** R_A(f) of IEC 61672-1, Annex E, with 2.00 dB at 1 kHz. */
    private static double weight(NoiseFigure figure, double f) {
        if (figure == NoiseFigure.RMS) {
            return 1;
        }
        double square = f * f;
        double r = 12194.0
                * 12194.0
                * square
                * square
                / ((square + 20.6 * 20.6)
                        * Math.sqrt((square + 107.7 * 107.7) * (square + 737.9 * 737.9))
                        * (square + 12194.0 * 12194.0));
        return r * r * Math.pow(10, 0.2);
    }
}
