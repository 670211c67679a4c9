package clipwitness.reading.layout;

import java.util.List;

/** What the cells of a row look like, a letter for each: n a number, t text, e empty; empty cells at the end do not count. */
final class Signature {
    static final char NUMBER = 'n';
    static final char TEXT = 't';
    static final char EMPTY = 'e';

    private Signature() {}

    static String of(List<String> cells, Dialect dialect) {
        StringBuilder letters = new StringBuilder();
        for (String cell : cells) {
            letters.append(letter(cell.isEmpty(), dialect.isNumber(cell)));
        }
        return of(letters);
    }

    /** The letter of a cell. */
    static char letter(boolean empty, boolean number) {
        return empty ? EMPTY : number ? NUMBER : TEXT;
    }

    /** The signature of letters of cells. */
    static String of(StringBuilder letters) {
        int end = letters.length();
        while (end > 0 && letters.charAt(end - 1) == EMPTY) {
            end--;
        }
        return letters.substring(0, end);
    }

    /** A signature with a number wherever one of two has one. */
    static String joined(String one, String other) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < Math.max(one.length(), other.length()); i++) {
            letters.append(isNumber(one, i) || isNumber(other, i) ? NUMBER : EMPTY);
        }
        return letters.toString();
    }

    private static boolean isNumber(String signature, int place) {
        return place < signature.length() && signature.charAt(place) == NUMBER;
    }

    /** How many cells are numbers. */
    static int numbers(String signature) {
        int numbers = 0;
        for (int i = 0; i < signature.length(); i++) {
            numbers += signature.charAt(i) == NUMBER ? 1 : 0;
        }
        return numbers;
    }

    /** No text among the cells, and a number at least. */
    static boolean pure(String signature) {
        return signature.indexOf(TEXT) < 0 && signature.indexOf(NUMBER) >= 0;
    }
}
