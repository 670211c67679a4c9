/**
 * Cells of a row and what they mean. In: bytes of one row. Out: numbers, units, marks for gaps. Knows no whole file. Used by
 * {@code reading} alone.
 */
package clipwitness.reading.number;
