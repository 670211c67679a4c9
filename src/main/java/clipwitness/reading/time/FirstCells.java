package clipwitness.reading.time;

import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.Dialect;
import java.util.Arrays;
import java.util.List;

/** The texts of a column in the first rows of samples. */
public final class FirstCells {
    private final Dialect dialect;
    private final List<List<String>> rows;

    public FirstCells(DataBlock block) {
        this.dialect = block.dialect();
        this.rows = block.firstRows();
    }

    /** The cells at a place of the rows, from 0; empty where a row is shorter. */
    public List<String> of(int place) {
        return rows.stream().map(r -> place < r.size() ? r.get(place) : "").toList();
    }

    /** Whether a column rises all the way, or falls all the way, as what a table goes over does. */
    public boolean sweeps(Column column) {
        double[] values = numbers(column);
        boolean rises = true;
        boolean falls = true;
        for (int i = 1; i < values.length; i++) {
            rises &= values[i] > values[i - 1];
            falls &= values[i] < values[i - 1];
        }
        return values.length > 1 && (rises || falls);
    }

    /** Whether a column rises but for values that repeat, as rounded time stamps do. */
    public boolean repeats(Column column) {
        double[] values = numbers(column);
        boolean repeats = false;
        for (int i = 1; i < values.length; i++) {
            if (!(values[i] >= values[i - 1])) {
                return false;
            }
            repeats |= values[i] == values[i - 1];
        }
        return repeats && values[values.length - 1] > values[0];
    }

    /** The numbers of a column in these rows; NaN where a cell holds none. */
    public double[] numbers(Column column) {
        return of(column.place()).stream().mapToDouble(dialect::number).toArray();
    }

    /** The same of a column whose values may be rounded: only digits that count are digits. */
    public Stamps rounded(Column column) {
        int digits = of(column.place()).stream()
                .mapToInt(c -> c.replaceFirst("[eEdD].*", "")
                        .replaceAll("\\D", "")
                        .replaceFirst("^0+", "")
                        .length())
                .max()
                .orElse(1);
        return axis(column, Math.max(1, digits));
    }

    /** How a column goes on over the first rows; a gap or a step back leaves no line. */
    public Stamps axis(Column column) {
        int digits =
                of(column.place()).stream().mapToInt(FirstCells::digits).max().orElse(1);
        return axis(column, digits);
    }

    private static int digits(String cell) {
        int digits = 0;
        for (int i = 0; i < cell.length(); i++) {
            digits += Character.isDigit(cell.charAt(i)) ? 1 : 0;
        }
        return digits;
    }

    private Stamps axis(Column column, int digits) {
        double[] values = untilEnd(numbers(column));
        for (int i = 1; i < values.length; i++) {
            if (!(values[i] >= values[i - 1])) {
                return Stamps.NONE;
            }
        }
        return values.length < 2 ? Stamps.NONE : Stamps.of(values, digits);
    }

    /** Without the rows at the end where a shorter column has no numbers any more. */
    private static double[] untilEnd(double[] values) {
        int end = values.length;
        while (end > 0 && Double.isNaN(values[end - 1])) {
            end--;
        }
        return Arrays.copyOf(values, end);
    }
}
