package clipwitness.reading.rows;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import clipwitness.reading.file.Notes;
import org.junit.jupiter.api.Test;

/** Rows without values at both ends of a table are taken out, in whichever pieces it was read. */
class BareRowsTest {
    @Test
    void theFirstAndTheLastRowsGoAndThoseBetweenStay() throws InputException {
        assertThat(left("bb12b3b")).containsExactly(1, 2, -1, 3);
        assertThat(left("12")).containsExactly(1, 2);
        assertThat(left("1bb")).containsExactly(1);
    }

    @Test
    void aTableOfNothingElseStays() throws InputException {
        assertThat(left("bbb")).containsExactly(-1, -1, -1);
    }

    @Test
    void piecesReadAloneMakeTheSame() throws InputException {
        assertThat(left("bb", "b1", "b", "2b", "bb")).containsExactly(1, -1, 2);
        assertThat(left("1b", "b2", "34", "b")).containsExactly(1, -1, -1, 2, 3, 4);
        assertThat(left("b", "12", "b", "b3")).containsExactly(1, 2, -1, -1, 3);
    }

    /** What is left of rows: digits are values, and a letter b stands for a row without one, -1 in what is left. */
    private static double[] left(String... pieces) throws InputException {
        NumberTable table = new NumberTable("rows.csv", new Room(1 << 20), 1, 0);
        BareRows bare = new BareRows();
        for (String piece : pieces) {
            BareRows own = new BareRows();
            int before = table.rows();
            for (int i = 0; i < piece.length(); i++) {
                boolean none = piece.charAt(i) == 'b';
                if (none) {
                    own.see(i);
                }
                table.add(new double[] {none ? -1 : piece.charAt(i) - '0'});
            }
            bare.see(own, before);
        }
        bare.end(table, new Notes());
        return table.take(0);
    }
}
