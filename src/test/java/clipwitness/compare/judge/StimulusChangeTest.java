package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.measure.WaveformQuantity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Measurement book, section 1, row stimulus-changed. */
class StimulusChangeTest {
    /** 20 lg(94.3 / 63.5) = 3.43 dB. */
    @Test
    void anInputHalfAsStrongAgainIsSaidAndCarriedByTheLevel() {
        StateAtCondition from = setting("a", 0.0635);
        StateAtCondition to = setting("b", 0.0943);
        assertThat(StimulusChange.ofLevel(from, to).orElseThrow().standardUncertainty())
                .isCloseTo(3.4346, within(1e-3));
        assertThat(StimulusChange.doubt(from, to))
                .map(Said::doubt)
                .contains("the input is 3.43 dB stronger than in State a: what changed may be the drive, not the unit");
    }

    @Test
    void aDifferenceOfOnePercentIsNone() {
        assertThat(StimulusChange.between(setting("a", 0.1), setting("b", 0.1009)))
                .isEmpty();
        assertThat(StimulusChange.between(setting("a", 0.1), setting("b", 0.1011)))
                .isPresent();
    }

    @Test
    void anInputTenPercentOffTheSheetIsSaid() {
        assertThat(StimulusChange.fromSheet(capture("a", 0.11)))
                .map(Said::doubt)
                .contains("the input measures 110.0 mV peak where the sheet states 100.0 mV");
        assertThat(StimulusChange.fromSheet(capture("a", 0.104))).isEmpty();
    }

    private static StateAtCondition setting(String state, double input) {
        CaptureResult capture = capture(state, input);
        return new StateAtCondition(state, "State " + state, capture.row().condition(), List.of(capture));
    }

    private static CaptureResult capture(String state, double input) {
        return MadeUpCapture.capture(state)
                .gain(50)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, input, 1e-5)
                .done();
    }
}
