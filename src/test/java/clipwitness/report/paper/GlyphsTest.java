package clipwitness.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class GlyphsTest {
    private static String printable(String text) throws IOException {
        try (PDDocument document = new PDDocument();
                Fonts fonts = new Fonts(document)) {
            return new Glyphs(fonts).printable(text);
        }
    }

    @Test
    void tradeSignsAreAllThere() throws IOException {
        String signs = "Ω µ μ − ≥ ≤ ± ° ∝ √ × · – — “ ” … → ✓ ✗ ■ ● αβγδεπρω ÄÖÜäöüßéèñçåøœšžłđ €";
        assertThat(printable(signs)).isEqualTo(signs);
    }

    @Test
    void aCharacterWithoutGlyphAndAControlCharacterAreSeenToBeMissing() throws IOException {
        assertThat(printable("漢 a\u0001b 🧰")).isEqualTo("[U+6F22] a[U+0001]b [U+1F9F0]");
    }

    /** Hebrew alef, Arabic beh with fatha (a mark on it), Syriac alaph; the digits of Arabic run from left to right. */
    @Test
    void lettersFromRightToLeftAreSeenToBeMissing() throws IOException {
        assertThat(printable("A\u05D0 \u0628\u064E \u0710 \u0661"))
                .isEqualTo("A[U+05D0] [U+0628][U+064E] [U+0710] \u0661");
    }

    @Test
    void whatOnlySteersTheSettingIsLeftOut() throws IOException {
        assertThat(printable("a\uD834\uDD73b")).isEqualTo("ab"); // U+1D173, begin of a beam
    }

    @Test
    void accentsAreComposed() throws IOException {
        assertThat(printable("e\u0301")).isEqualTo("é");
    }

    @Test
    void linesStayLines() throws IOException {
        assertThat(printable("a\n\tb\r\n")).isEqualTo("a\n\tb\r\n");
    }

    @Test
    void theFallbackTakesOnlyWhatTheUsualFaceLacks() throws IOException {
        try (PDDocument document = new PDDocument();
                Fonts fonts = new Fonts(document)) {
            assertThat(TextRun.of("U ∝ I", Face.BOLD, new Glyphs(fonts)))
                    .containsExactly(
                            new TextRun("U ", Face.BOLD),
                            new TextRun("∝", Face.FALLBACK),
                            new TextRun(" I", Face.BOLD));
        }
    }
}
