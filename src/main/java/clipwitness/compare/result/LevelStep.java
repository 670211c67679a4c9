package clipwitness.compare.result;

import clipwitness.measure.Measured;

/**
 * One step of a level series.
 *
 * @param input  peak amplitude of the input's fundamental, or of the stimulus as stated, V
 * @param output peak amplitude of the output's fundamental, V
 * @param slope  dB out a dB in from the step below; a refusal at the first step
 */
public record LevelStep(double input, Measured output, Measured slope) {}
