package clipwitness.figure.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.figure.RecordingCanvas;
import org.junit.jupiter.api.Test;

class TextsTest {
    private static final RecordingCanvas CANVAS = new RecordingCanvas();

    @Test
    void aTextThatFitsStays() {
        assertThat(Texts.fitted(CANVAS, "As received", 7.5, false, 100)).isEqualTo("As received");
    }

    @Test
    void aLongTextKeepsItsBeginningAndItsEnd() {
        String fitted = Texts.fitted(CANVAS, "After the germanium pair (second try)", 7.5, false, 80);
        assertThat(fitted).startsWith("After").contains("…").endsWith("try)");
        assertThat(CANVAS.textWidth(fitted, 7.5, false)).isLessThanOrEqualTo(80);
    }

    @Test
    void whereNothingFitsNothingIsWritten() {
        assertThat(Texts.fitted(CANVAS, "As received", 7.5, false, 2)).isEmpty();
    }
}
