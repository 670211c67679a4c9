/**
 * The pictures of a report. In: finished results. Out: figures that paint on any canvas. Computes and judges nothing.
 */
package clipwitness.figure;
