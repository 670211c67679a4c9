package clipwitness.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Beginnings that spreadsheets take for formulas: CWE-1236, Improper Neutralization of Formula Elements in a CSV File. */
class SpreadsheetCellTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+cmd", "-x", "@SUM(A1)", "=", "-", "-1+2", "\tx", "-1.5.csv"})
    void aFormulaBecomesText(String cell) {
        assertEquals("'" + cell, SpreadsheetCell.harmless(cell));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1.5", "+2", "-3.2E-7", "1e9", "", "captures/a.csv", "2-3", "below -60"})
    void numbersAndOtherTextsStay(String cell) {
        assertEquals(cell, SpreadsheetCell.harmless(cell));
    }
}
