package clipwitness.reading.layout;

/**
 * How the rows of samples of a file look.
 *
 * @param dialect   delimiter and decimal mark
 * @param signature letters of {@link Signature} that most rows have
 * @param rows      how many of the lines looked at have it
 * @param lines     how many lines were looked at
 */
public record RowStyle(Dialect dialect, String signature, int rows, int lines) {
    private static final int FEW = 10;

    boolean pure() {
        return Signature.pure(signature);
    }

    /** No text in the rows, and not just a few such lines among many others. */
    boolean plain() {
        return pure() && rows * FEW >= lines;
    }

    int numbers() {
        return Signature.numbers(signature);
    }

    /** Whether the column, from 0, is one of those that most rows leave empty. */
    boolean isEmpty(int column) {
        return column < signature.length() && signature.charAt(column) == Signature.EMPTY;
    }

    /** Whether the column, from 0, holds numbers. */
    boolean isNumber(int column) {
        return column < signature.length() && signature.charAt(column) == Signature.NUMBER;
    }
}
