package clipwitness.reading.rows;

import java.util.Arrays;
import java.util.Optional;

/**
 * How a whole row of plain numbers is written: where its digits stand, and what every other byte of it is. Rows of an export are mostly
 * written alike, and of a row that is, eight bytes are checked at a time and no number waits for the one before to be found.
 */
final class RowShape {
    private static final int LONGEST_ROW = 256;
    private static final int AT_ONCE = 4; // words without a loop, which most rows have at most

    private final int length;
    private final ByteWord first;
    private final ByteWord second;
    private final ByteWord third;
    private final ByteWord fourth;
    private final ByteWord[] further;
    private final NumberPlace[] numbers;

    /** The shape of a row, with its line end, of which all bytes but the digits are as they are here. */
    private RowShape(byte[] bytes, int from, int to, NumberPlace[] numbers) {
        this.length = to - from;
        this.numbers = numbers;
        this.first = word(bytes, from, 0);
        this.second = word(bytes, from, 1);
        this.third = word(bytes, from, 2);
        this.fourth = word(bytes, from, 3);
        this.further = new ByteWord[Math.max(0, (length - 1) / ByteWord.BYTES + 1 - AT_ONCE)];
        Arrays.setAll(further, i -> word(bytes, from, AT_ONCE + i));
    }

    private ByteWord word(byte[] bytes, int from, int number) {
        return ByteWord.of(bytes, from + ByteWord.BYTES * number, from + length);
    }

    /**
     * The shape of a row that was read as a plain one.
     *
     * @param from start of the row
     * @param to   place after its line end
     * @return empty where the row is too long, or a number in it
     */
    static Optional<RowShape> of(byte[] bytes, int from, int to, RowPlan plan) {
        if (to - from > LONGEST_ROW) {
            return Optional.empty();
        }
        int[] keptBy = plan.keptBy();
        NumberPlace[] numbers = new NumberPlace[plan.places().size()];
        int cell = from;
        for (int kept : keptBy) {
            while (bytes[cell] == ' ') {
                cell++;
            }
            if (kept >= 0) {
                numbers[kept] =
                        NumberPlace.of(bytes, from, cell, (byte) plan.dialect().mark());
            }
            while (cell < to && bytes[cell] != plan.dialect().delimiter().first()) {
                cell++;
            }
            cell++;
        }
        return Arrays.asList(numbers).contains(null)
                ? Optional.empty()
                : Optional.of(new RowShape(bytes, from, to, numbers));
    }

    /** Bytes of the row, its line end included. */
    int length() {
        return length;
    }

    /** Characters of the last number from its decimal mark on, exponent included. */
    int afterMark() {
        return numbers[numbers.length - 1].afterMark();
    }

    /** Whether a row is written like this. */
    boolean fits(byte[] bytes, int from) {
        if (from > bytes.length - ByteWord.BYTES * (AT_ONCE + further.length)) {
            return false;
        }
        long wrong = first.wrong(bytes, from)
                | second.wrong(bytes, from + ByteWord.BYTES)
                | third.wrong(bytes, from + 2 * ByteWord.BYTES)
                | fourth.wrong(bytes, from + 3 * ByteWord.BYTES);
        return wrong == 0 && (further.length == 0 || furtherFit(bytes, from + AT_ONCE * ByteWord.BYTES));
    }

    private boolean furtherFit(byte[] bytes, int from) {
        long wrong = 0;
        for (int i = 0; i < further.length; i++) {
            wrong |= further[i].wrong(bytes, from + ByteWord.BYTES * i);
        }
        return wrong == 0;
    }

    /** How many kept columns it has. */
    int numbers() {
        return numbers.length;
    }

    /** The number of a kept column. */
    NumberPlace number(int column) {
        return numbers[column];
    }
}
