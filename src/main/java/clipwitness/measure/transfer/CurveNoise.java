package clipwitness.measure.transfer;

/**
 * Noise of the outputs that are made of one by straightening: the same for all of them.
 *
 * @param scatter    scatter of one sample of the output, V; with that share of the converter step
 * @param undithered what the converter step adds to one value where noise does not dither it, V
 */
record CurveNoise(double scatter, double undithered) {}
