/**
 * Cells of a row and what they mean. In: bytes of one row. Out: numbers, units, marks for gaps. Does not handle whole files. Used by
 * {@code reading} only.
 */
package clipwitness.reading.number;
