/**
 * Finished results drawn on any canvas. In: results. Out: paint. Computes and judges nothing.
 */
package clipwitness.figure;
