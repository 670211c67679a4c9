package clipwitness.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Control characters: general category Cc of the Unicode Standard, chapter 23.1; direction marks: its Annex 9. */
class LabelTextTest {
    @Test
    void tabsAndLineEndsBecomeASpace() {
        assertEquals("After, original clippers", LabelText.line("\tAfter,\t original\r\n clippers \n"));
        assertEquals("a b c d", LabelText.line("a\u2028b\u0085c\u000bd"));
    }

    @Test
    void anEscapeSequenceLosesItsEscape() {
        assertEquals("D1 [31m red", LabelText.line("D1\u001b[31m\u009b red"));
    }

    @Test
    void directionOverridesGo() {
        assertEquals("gnp. x.exe", LabelText.line("gnp.\u202ex.exe"));
    }

    @Test
    void lettersOfAllScriptsStay() {
        String names = "Gerät α, Öl & Ω — Ž 10 kΩ\u00a0± 5 % 👍";
        assertEquals(names, LabelText.line(names));
        assertTrue(LabelText.isOneLine(names));
    }

    @Test
    void halfASurrogatePairIsReplaced() {
        assertEquals("D\ufffd1", LabelText.line("D\ud83d1"));
    }

    @Test
    void linesStayLinesWhateverEndsThem() {
        assertEquals("one\ntwo three\nfour", LabelText.lines("one \r\n two\tthree\rfour\n"));
        assertFalse(LabelText.isOneLine("one\ntwo"));
    }
}
