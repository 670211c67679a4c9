/**
 * How an export is laid out. In: its first lines. Out: delimiter and decimal mark, preamble, headings, columns. Reads no row of samples to
 * its end. Used by {@code reading} only.
 */
package clipwitness.reading.layout;
