/**
 * One waveform capture from samples to results. In: samples of output and input. Out:
 * {@link clipwitness.measure.WaveformResult} with doubts. Independent of files.
 */
package clipwitness.measure.capture;
