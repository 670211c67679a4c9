package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.compare.SaidHint;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sines of peak 0.3 V, 1 V, 2.5 V and 5 V, clipped by perfect limiters: at 0.5 V above and below, at 1 V below, not at all on one side. */
class LegHintsTest {
    private static final double NEVER = 1e9;

    @TempDir
    private Path folder;

    @Test
    void aHalfThatNoLongerClipsNamesItself() throws IOException, InputException {
        List<MadeUpCapture> captures = control("before", 0.5, 0.5);
        captures.addAll(control("old", NEVER, 0.5));
        assertThat(hints(captures))
                .extracting(SaidHint::code, SaidHint::text, SaidHint::evidence)
                .containsExactly(tuple(
                        "one-side-not-clipping",
                        "Old pair: the lower half of the wave does not clip where the other does. Look for an open leg, "
                                + "a lifted joint or a device that does not conduct.",
                        "at full gain the peak of the lower half is 1.97 times the other (before 1.00), its clip level 10.0"
                                + " times (before 1.00)"));
    }

    @Test
    void aLegThatWasOpenBeforeTheWorkIsNoHint() throws IOException, InputException {
        List<MadeUpCapture> captures = control("before", NEVER, 0.5);
        captures.addAll(control("old", NEVER, 0.5));
        captures.addAll(control("new", 0.5, 0.5));
        assertThat(hints(captures)).isEmpty();
    }

    @Test
    void aLegThatTheSheetLeavesOpenIsMeantToBe() throws IOException, InputException {
        List<MadeUpCapture> captures = control("before", 0.5, 0.5);
        captures.addAll(control("old", NEVER, 0.5));
        String clipper =
                "clipper: {topology: shunt, source-resistance: 10 kΩ, pairs: {before: [D1, D2], old: [D1, %s]}}\n";
        assertThat(codes(clipper.formatted("[]"), captures)).doesNotContain("one-side-not-clipping");
        assertThat(codes(clipper.formatted("D2"), captures)).contains("one-side-not-clipping");
    }

    private List<String> codes(String sections, List<MadeUpCapture> captures) throws IOException, InputException {
        return new TestExamination(folder)
                .with(sections, captures.toArray(MadeUpCapture[]::new)).hints().stream()
                        .map(h -> h.code().code())
                        .toList();
    }

    @Test
    void oneAgainstTwoAsMeantIsNoHint() throws IOException, InputException {
        List<MadeUpCapture> captures = control("before", 0.5, 0.5);
        captures.addAll(control("old", 0.5, 0.5));
        captures.addAll(control("new", 1, 0.5));
        assertThat(hints(captures)).isEmpty();
    }

    @Test
    void twoStatesThatShareAnOpenLegAreOneHint() throws IOException, InputException {
        List<MadeUpCapture> captures = control("before", 0.5, 0.5);
        captures.addAll(control("old", 0.5, NEVER));
        captures.addAll(control("new", 0.5, NEVER));
        assertThat(hints(captures))
                .extracting(SaidHint::text)
                .containsExactly(
                        "Old pair: the upper half of the wave does not clip where the other does. Look for an open leg, "
                                + "a lifted joint or a device that does not conduct. The same holds for new pair.");
    }

    /** A stage that runs out of supply clips by itself at full gain. */
    @Test
    void clippersOutOfCircuitShowAtTheSettingsBelowTheOneWhereTheStageItselfClips() throws IOException, InputException {
        List<MadeUpCapture> captures = control("before", 0.5, 0.5);
        captures.addAll(control("old", 3, 3));
        assertThat(hints(captures))
                .extracting(SaidHint::code, SaidHint::text)
                .containsExactly(
                        tuple(
                                "not-clipping",
                                "Old pair: it hardly clips at settings where the unit did before. Look for clippers that are not "
                                        + "connected, a switch that leaves them out, or a leg that is open behind a coupling capacitor."));
    }

    /** A changed pair may clip at six times the level, as lamps do beside silicon. */
    @Test
    void aChangedPairMayClipLater() throws IOException, InputException {
        List<MadeUpCapture> captures = control("before", 0.5, 0.5);
        captures.addAll(control("old", 0.5, 0.5));
        captures.addAll(control("new", 3, 3));
        assertThat(hints(captures)).isEmpty();
    }

    private List<SaidHint> hints(List<MadeUpCapture> captures) throws IOException, InputException {
        return new TestExamination(folder)
                .of(captures.toArray(MadeUpCapture[]::new)).hints().stream()
                        .map(SaidHint::of)
                        .toList();
    }

    private static List<MadeUpCapture> control(String state, double lower, double upper) {
        List<MadeUpCapture> captures = new ArrayList<>();
        double[] drives = {0.3, 1, 2.5, 5};
        for (int i = 0; i < drives.length; i++) {
            captures.add(limited(state, (double) Math.round(100 * i / 3.0), drives[i], lower, upper));
        }
        return captures;
    }

    private static MadeUpCapture limited(String state, double gain, double drive, double lower, double upper) {
        int count = 10_000;
        double[] wave = new double[count];
        for (int i = 0; i < count; i++) {
            wave[i] = Math.max(-lower, Math.min(upper, drive * Math.sin(2 * Math.PI * i / count)));
        }
        double mean = Arrays.stream(wave).average().orElseThrow();
        double up = Arrays.stream(wave).max().orElseThrow() - mean;
        double down = mean - Arrays.stream(wave).min().orElseThrow();
        double rms =
                Math.sqrt(Arrays.stream(wave).map(v -> (v - mean) * (v - mean)).sum() / count);
        double[] harmonics = new double[15];
        for (int i = 0; i < count; i++) {
            for (int k = 1; k <= harmonics.length; k++) {
                double turn = 2 * Math.PI * k * i / count;
                harmonics[k - 1] += 2 * wave[i] * (k % 2 == 1 ? Math.sin(turn) : Math.cos(turn)) / count;
            }
        }
        double above = Arrays.stream(harmonics).skip(1).map(a -> a * a).sum();
        return MadeUpCapture.ordinary(state, gain)
                .with(WaveformQuantity.RMS, rms, 1e-5)
                .with(WaveformQuantity.THD, Math.max(0.01, 100 * Math.sqrt(above) / Math.abs(harmonics[0])), 1e-3)
                .with(WaveformQuantity.PEAK_UP, up, 1e-4)
                .with(WaveformQuantity.PEAK_DOWN, down, 1e-4)
                .with(WaveformQuantity.CLIP_UP, up + mean, 1e-4)
                .with(WaveformQuantity.CLIP_DOWN, down - mean, 1e-4)
                .with(WaveformQuantity.DWELL_UP, dwell(wave, v -> v - mean >= 0.9 * up), 0.1)
                .with(WaveformQuantity.DWELL_DOWN, dwell(wave, v -> mean - v >= 0.9 * down), 0.1)
                .harmonics(harmonics);
    }

    private static double dwell(double[] wave, DoublePredicate near) {
        return 100.0 * Arrays.stream(wave).filter(near).count() / wave.length;
    }
}
