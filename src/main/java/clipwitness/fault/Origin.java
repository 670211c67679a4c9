package clipwitness.fault;

import java.util.Objects;

/**
 * Where something stands: a file, and in it a line and a column where that is known.
 *
 * @param file   name of the file as the user wrote it
 * @param line   1-based line, 0 where the whole file is meant
 * @param column name of a column or a key, empty where the whole line is meant
 */
public record Origin(String file, int line, String column) {
    /** Checks that the line is not negative. */
    public Origin {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(column, "column");
        if (line < 0) {
            throw new IllegalArgumentException("line must be 0 or more but is " + line);
        }
    }

    /** The whole file. */
    public static Origin of(String file) {
        return new Origin(file, 0, "");
    }

    /** One line of a file. */
    public static Origin of(String file, int line) {
        return new Origin(file, line, "");
    }

    /** As a message starts: {@code after.csv, line 214, CH2}. */
    @Override
    public String toString() {
        return file + (line > 0 ? ", line " + line : "") + (column.isEmpty() ? "" : ", " + column);
    }
}
