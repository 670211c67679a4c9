/**
 * An export as bytes and lines. In: a file on disk. Out: its encoding, its first lines, its bytes; notes on what was found. Does not
 * read cells or numbers. Used by {@code reading} only.
 */
package clipwitness.reading.file;
