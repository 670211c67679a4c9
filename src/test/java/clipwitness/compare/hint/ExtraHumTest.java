package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.SaidHint;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Measurement book, section 9: hum of twice the amplitude of before, uncertainties counted, or where there was none. */
class ExtraHumTest {
    private static final String TEXT = "Old pair: hum or another slow wave runs under the tone that was not there "
            + "before. Look at grounds, shields, the supply and how the leads lie.";

    @TempDir
    private Path folder;

    @Test
    void humThatWasNotThereBeforeIsNamedAtTheSettingWhereItIsLoudest() throws IOException, InputException {
        assertThat(hints(
                        MadeUpCapture.ordinary("before", 50),
                        MadeUpCapture.ordinary("before", 75),
                        MadeUpCapture.ordinary("before", 100),
                        MadeUpCapture.ordinary("old", 50).slow(50, 12e-3, 1e-4),
                        MadeUpCapture.ordinary("old", 75).slow(100, 20e-3, 1e-4),
                        MadeUpCapture.ordinary("old", 100).slow(50, 15e-3, 1e-4)))
                .containsExactly(new SaidHint(
                        "extra-hum",
                        Optional.of("old"),
                        TEXT,
                        "at 75\u00A0% gain 20\u00A0mV at about 100\u00A0Hz, before none that stands out"));
    }

    /** 5.0 mV ± 0.2 mV before are 5.2 mV at most, twice that is 10.4 mV; 10.7 mV ± 0.1 mV now are 10.6 mV at least. */
    @Test
    void humOfTwiceTheAmplitudeIsNamedWithBothFigures() throws IOException, InputException {
        assertThat(hints(before(), MadeUpCapture.ordinary("old", 50).slow(50, 10.7e-3, 0.05e-3)))
                .containsExactly(new SaidHint(
                        "extra-hum",
                        Optional.of("old"),
                        TEXT,
                        "at 50\u00A0% gain 11\u00A0mV at about 50\u00A0Hz, before 5.0\u00A0mV"));
    }

    /** Now 10.45 mV ± 0.1 mV: more than twice 5.0 mV, but not beyond both uncertainties. */
    @Test
    void humThatMayBeLessThanTwiceIsNone() throws IOException, InputException {
        assertThat(hints(before(), MadeUpCapture.ordinary("old", 50).slow(50, 10.45e-3, 0.05e-3)))
                .isEmpty();
        assertThat(hints(before(), MadeUpCapture.ordinary("old", 50).slow(50, 10.1e-3, 0.001e-3)))
                .isEmpty();
    }

    @Test
    void humThatWentIsNoFault() throws IOException, InputException {
        assertThat(hints(before(), MadeUpCapture.ordinary("old", 50))).isEmpty();
    }

    private static MadeUpCapture before() {
        return MadeUpCapture.ordinary("before", 50).slow(50, 5e-3, 0.1e-3);
    }

    private List<SaidHint> hints(MadeUpCapture... captures) throws IOException, InputException {
        return new TestExamination(folder)
                .of(captures).hints().stream().map(SaidHint::of).toList();
    }
}
