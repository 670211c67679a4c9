package clipwitness.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Control functions begin with C0 or C1 control characters: ECMA-48, 5th edition, 5.2 and 5.3. */
class PlainWriterTest {
    private static String passed(String text) {
        StringWriter to = new StringWriter();
        PrintWriter out = new PrintWriter(new PlainWriter(to));
        out.print(text);
        out.write('\u0007');
        out.flush();
        return to.toString();
    }

    @Test
    void noControlFunctionReachesTheTerminal() {
        assertEquals("a\ufffd[2J\ufffd31m\ufffdb\ufffd", passed("a\u001b[2J\u009b31m\u007fb"));
    }

    @Test
    void textTabsAndLinesPass() {
        assertEquals("Öl\t1\r\n2\n\ufffd", passed("Öl\t1\r\n2\n"));
    }

    @Test
    void textIsNotTurnedOver() {
        assertEquals("report\ufffdgnp.exe\ufffd", passed("report\u202egnp.exe"));
    }
}
