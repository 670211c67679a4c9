/**
 * Fast reading of long files. In: a file whose layout is known. Out: columns of numbers, and the place of every row that cannot be
 * read. Decides nothing about the layout. Used by {@code reading} only.
 */
package clipwitness.reading.rows;
