package clipwitness.capture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DoubtTest {
    @ParameterizedTest
    @ValueSource(strings = {"The screen is half empty", "The screen is half empty."})
    void theTextIsASentenceAndAReasonWhetherItEndsWithAFullStopOrNot(String text) {
        Doubt doubt = new Doubt(DoubtCode.LOW_RESOLUTION, Severity.WARNING, text);
        assertThat(doubt.sentence()).isEqualTo("The screen is half empty.");
        assertThat(doubt.reason()).isEqualTo("the screen is half empty");
    }
}
