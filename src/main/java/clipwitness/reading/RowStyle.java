package clipwitness.reading;

/**
 * How the rows of samples of a file look.
 *
 * @param dialect   delimiter and decimal mark
 * @param signature letters of {@link Signature} that most rows have
 * @param rows      how many of the lines looked at have it
 */
record RowStyle(Dialect dialect, String signature, int rows) {
    boolean pure() {
        return Signature.pure(signature);
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
