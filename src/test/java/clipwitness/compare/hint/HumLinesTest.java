package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Hint;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestExamination;
import clipwitness.reason.HintRemark;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which lines of the mains grew and what that suggests: even multiples ripple, odd ones induction (common practice). */
class HumLinesTest {
    @TempDir
    private Path folder;

    private static CaptureResult humming(String state, double gain, double... amplitudes) {
        return MadeUpQuiet.of(state)
                .gain(gain)
                .export(state + gain)
                .noise(MadeUpQuiet.hiss(1).withHum(MadeUpQuiet.hum(50, amplitudes)));
    }

    private List<Hint> hints(CaptureResult... captures) throws IOException, InputException {
        return new TestExamination(folder)
                .examined("bench: {mains: 50 Hz}\n", List.of(captures))
                .hints();
    }

    private Hint hint(double... after) throws IOException, InputException {
        List<Hint> hints = hints(humming("before", 50, 1e-3, 1e-3, 1e-3, 1e-3), humming("old", 50, after));
        assertThat(hints).hasSize(1);
        assertThat(hints.get(0).states()).containsExactly("old");
        return hints.get(0);
    }

    @Test
    void evenMultiplesAreRippleAndOddOnesAreInduced() throws IOException, InputException {
        assertThat(hint(1e-3, 9e-3, 1e-3, 1e-3).text().code()).isEqualTo(HintRemark.EXTRA_HUM_RIPPLE);
        assertThat(hint(9e-3, 1e-3, 1e-3, 1e-3).text().code()).isEqualTo(HintRemark.EXTRA_HUM_INDUCED);
        assertThat(hint(9e-3, 9e-3, 1e-3, 1e-3).text().code()).isEqualTo(HintRemark.EXTRA_HUM_BOTH);
    }

    /** Growth of the squares of the even lines in (mV)²: 48 of 63, 76 %, then 48 of 83, 58 %, 35 of 83, 42 %, and 15 of 63, 24 %. */
    @Test
    void twoThirdsOfWhatGrewDecide() throws IOException, InputException {
        assertThat(hint(4e-3, 7e-3, 1e-3, 1e-3).text().code()).isEqualTo(HintRemark.EXTRA_HUM_RIPPLE);
        assertThat(hint(6e-3, 7e-3, 1e-3, 1e-3).text().code()).isEqualTo(HintRemark.EXTRA_HUM_BOTH);
        assertThat(hint(7e-3, 6e-3, 1e-3, 1e-3).text().code()).isEqualTo(HintRemark.EXTRA_HUM_BOTH);
        assertThat(hint(7e-3, 4e-3, 1e-3, 1e-3).text().code()).isEqualTo(HintRemark.EXTRA_HUM_INDUCED);
    }

    @Test
    void atMostThreeLinesAreNamedThoseThatGrewMostFirst() throws IOException, InputException {
        assertThat(Said.hint(hint(1e-3, 9e-3, 1e-3, 1e-3))).contains(" at 100 Hz");
        assertThat(Said.hint(hint(8e-3, 9e-3, 1e-3, 1e-3))).contains(" at 100 and 50 Hz");
        assertThat(Said.hint(hint(6e-3, 9e-3, 7e-3, 8e-3))).contains(" at 100, 200 and 150 Hz");
    }

    /** 10 mV peak are 7.07 mV rms, 1 mV are 0.707 mV; the squares grew from 4 to 103 (mV)², 14.1 dB. */
    @Test
    void theEvidenceIsTheLineThatGrewMostAndTheGrowthOfAll() throws IOException, InputException {
        assertThat(Said.evidence(hint(1e-3, 10e-3, 1e-3, 1e-3)))
                .containsPattern("50.% gain")
                .containsPattern("100.Hz")
                .containsPattern("7\\.07.mV")
                .containsPattern("707.[uµμ]V")
                .containsPattern("14\\.1.dB");
    }

    @Test
    void theConditionWhereHumGrewMostIsTold() throws IOException, InputException {
        List<Hint> hints = hints(
                humming("before", 25, 1e-3),
                humming("before", 50, 1e-3),
                humming("before", 75, 1e-3),
                humming("old", 25, 3e-3),
                humming("old", 50, 9e-3),
                humming("old", 75, 4e-3));
        assertThat(hints).hasSize(1);
        assertThat(Said.evidence(hints.get(0))).containsPattern("50.% gain");
    }

    /** 3 dB is the limit of hum: squares of 1 and 1.96 are 2.9 dB apart, 1 and 2.25 are 3.5 dB. */
    @Test
    void humWithinItsLimitIsNoHint() throws IOException, InputException {
        assertThat(hints(humming("before", 50, 1e-3), humming("old", 50, 1.4e-3)))
                .isEmpty();
        assertThat(hints(humming("before", 50, 1e-3), humming("old", 50, 1.5e-3)))
                .hasSize(1);
    }
}
