package clipwitness.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    /** The first row is the usual textbook example of the Levenshtein distance, the second differs from it by one swap. */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "orignial, original, 1",
        "orignal, original, 1",
        "stimulis, stimulus, 1",
        "state, state, 0",
        "'', gain, 4",
        "gain, '', 4",
    })
    void lettersToChange(String from, String to, int distance) {
        assertThat(Nearest.distance(from, to)).isEqualTo(distance);
    }

    @Test
    void theFirstOfSeveralIsTheNearest() {
        assertThat(Nearest.to("cat", List.of("bat", "hat"))).contains("bat");
        assertThat(Nearest.to("cat", List.of())).isEmpty();
    }

    @Test
    void caseDoesNotMatter() {
        assertThat(Nearest.slipOf("GAIN", List.of("gain"))).contains("gain");
    }

    @Test
    void aSlipIsNearEnoughToBeMeant() {
        assertThat(Nearest.slipOf("wavefrm", List.of("noise", "waveform"))).contains("waveform");
        assertThat(Nearest.slipOf("path", List.of("date"))).isEmpty();
    }

    @Test
    void aWholePageIsNotCompared() {
        assertThat(Nearest.to("x".repeat(1 << 20), List.of("gain"))).contains("gain");
    }
}
