/**
 * One waveform capture from samples to results. In: samples of output and input. Out:
 * {@link clipwitness.measure.WaveformResult} with doubts. Knows no file.
 */
package clipwitness.measure.capture;
