/**
 * The mathematics of periodic records: sine and harmonic fit, mean cycle, spectra. In: samples. Out: numbers.
 * Independent of files, reports and verdicts.
 */
package clipwitness.signal;
