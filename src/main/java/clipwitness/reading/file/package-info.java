/**
 * An export as bytes and lines. In: a file on disk. Out: its encoding, its first lines, its bytes; notes on what was found. Knows nothing
 * of cells and numbers. Used by {@code reading} alone.
 */
package clipwitness.reading.file;
