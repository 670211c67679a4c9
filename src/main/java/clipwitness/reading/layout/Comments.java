package clipwitness.reading.layout;

import java.util.regex.Pattern;

/** Marks that make a line a comment, taken off the line. */
final class Comments {
    private static final Pattern MARK = Pattern.compile("^\\s*,?\\s*\"?\\s*(?:#|%|//|!|\\*)+\\s*");
    private static final Pattern SEMICOLON = Pattern.compile("^\\s*;+\\s*");

    private Comments() {}

    /** Whether a line is a comment even among rows: it starts with a hash and is no row of marks. */
    static boolean isComment(String line) {
        String text = line.stripLeading();
        return text.startsWith("#") && !text.startsWith("##") && !text.startsWith("#N");
    }

    /** The line without its comment mark; a semicolon is one only where it does not separate cells. */
    static String stripped(String line, Dialect dialect) {
        boolean separates = dialect.delimiter().ends(';');
        String text = separates ? line : SEMICOLON.matcher(line).replaceFirst("");
        return MARK.matcher(text).replaceFirst("");
    }
}
