/**
 * The mathematics of periodic records: sine and harmonic fit, mean cycle, spectra. In: samples. Out: numbers.
 * Knows no file, no unit of paper, no verdict.
 */
package clipwitness.signal;
