package clipwitness.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Passes text on without what could control a terminal (ECMA-48 control functions): control characters other than tab and line ends, and the characters
 * that turn the direction of text over, come out as the replacement character U+FFFD. Names of files, channels and states may hold such characters.
 */
final class PlainWriter extends FilterWriter {
    private static final char REPLACEMENT = '\ufffd';

    PlainWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(int c) throws IOException {
        out.write(plain((char) c));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        char[] plain = new char[length];
        for (int i = 0; i < length; i++) {
            plain[i] = plain(text[from + i]);
        }
        out.write(plain, 0, length);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        write(text.toCharArray(), from, length);
    }

    private static char plain(char c) {
        boolean lineOrTab = c == '\n' || c == '\r' || c == '\t';
        boolean turns = (c >= '\u202a' && c <= '\u202e') || (c >= '\u2066' && c <= '\u2069');
        return turns || (Character.isISOControl(c) && !lineOrTab) ? REPLACEMENT : c;
    }
}
