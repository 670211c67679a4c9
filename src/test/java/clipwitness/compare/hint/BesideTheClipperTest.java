package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.SaidHint;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sine where nothing clips, a square wave (A_k = 1/k for odd k) where it does, and a filter or a level behind both. */
class BesideTheClipperTest {
    private static final int COUNT = 15;

    @TempDir
    private Path folder;

    /** A low-pass at three times the test tone: 10 lg(1 + k²/9) dB, 0.46 for the fundamental, 3.01 for the third, 8.1 for the seventh. */
    @Test
    void aLowPassBehindTheClipperMakesItDullerAtAllSettings() throws IOException, InputException {
        assertThat(hints(k -> 1 / Math.sqrt(1 + k * k / 9.0), k -> 1 / Math.sqrt(1 + k * k / 9.0)))
                .singleElement()
                .satisfies(h -> {
                    assertThat(h.code()).isEqualTo("beside-the-clipper");
                    assertThat(h.text())
                            .isEqualTo(
                                    "Old pair: it is duller. Its higher harmonics are weaker alike at all settings where they can be "
                                            + "compared. Look at filters behind or before the clipper.");
                    assertThat(h.evidence())
                            .isEqualTo(
                                    "the fundamental moved by −0.5 dB, at 0\u00a0% gain too, where nothing clips. Harmonic 3 over"
                                            + " it: −2.6 dB. Harmonic 7 over it: −7.6 dB");
                });
    }

    @Test
    void aHighPassBehindTheClipperMakesItThinner() throws IOException, InputException {
        assertThat(hints(k -> k / Math.sqrt(1 + k * k), k -> k / Math.sqrt(1 + k * k)))
                .extracting(SaidHint::text)
                .containsExactly(
                        "Old pair: it is thinner. Its higher harmonics are stronger alike at all settings where they can be "
                                + "compared. Look at coupling capacitors and filters behind or before the clipper.");
    }

    @Test
    void aLevelThatMovedAtAllSettingsIsAnotherLevel() throws IOException, InputException {
        assertThat(hints(k -> 0.8, k -> 0.8))
                .extracting(SaidHint::text)
                .containsExactly(
                        "Old pair: it has another level at all settings alike, also where nothing clips. Look at the "
                                + "volume control and at what sets the level behind or before the clipper.");
        assertThat(hints(k -> 0.8, k -> 0.8))
                .extracting(SaidHint::evidence)
                .allMatch(e -> e.matches(".*Harmonic 3 over it: no change above 0\\.[1-9] dB\\..*"));
    }

    /** Another clipper changes nothing where nothing clips. */
    @Test
    void aLevelThatMovedOnlyWhereItClipsIsTheClippers() throws IOException, InputException {
        assertThat(hints(k -> 1, k -> 0.8)).isEmpty();
    }

    /** One harmonic that sticks out is no filter of the first order. */
    @Test
    void oneHarmonicThatMovedAloneIsNoFilter() throws IOException, InputException {
        assertThat(hints(k -> 0.9, k -> k == 3 ? 0.6 : 0.9)).isEmpty();
    }

    @Test
    void aLevelThatMovedWithinItsLimitIsNoFault() throws IOException, InputException {
        assertThat(hints(k -> 0.96, k -> 0.96)).isEmpty();
    }

    private List<SaidHint> hints(IntToDoubleFunction clean, IntToDoubleFunction clipped)
            throws IOException, InputException {
        return new TestExamination(folder)
                        .of(
                                wave("before", 0, k -> k == 1 ? 0.3 : 0),
                                wave("before", 100, BesideTheClipperTest::square),
                                wave("old", 0, k -> k == 1 ? 0.3 * clean.applyAsDouble(1) : 0),
                                wave("old", 100, k -> square(k) * clipped.applyAsDouble(k)))
                        .hints()
                        .stream()
                        .map(SaidHint::of)
                        .toList();
    }

    private static double square(int order) {
        return order % 2 == 1 ? 1.0 / order : 0;
    }

    private static MadeUpCapture wave(String state, double gain, IntToDoubleFunction amplitude) {
        double[] harmonics =
                IntStream.rangeClosed(1, COUNT).mapToDouble(amplitude).toArray();
        double squares = 0;
        for (double a : harmonics) {
            squares += a * a;
        }
        double above = Math.sqrt(squares - harmonics[0] * harmonics[0]);
        return MadeUpCapture.ordinary(state, gain)
                .with(WaveformQuantity.RMS, Math.sqrt(squares / 2), 1e-5)
                .with(WaveformQuantity.THD, Math.max(0.1, 100 * above / harmonics[0]), 0.01)
                .harmonics(harmonics);
    }
}
