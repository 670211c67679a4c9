/**
 * Noise and hum of one record with the input terminated. In: a wave, the mains frequency where it is known. Out: {@link
 * clipwitness.measure.noise.NoiseResult}: rms in a band, A-weighted, lines of the mains, and the spectrum they are from.
 */
package clipwitness.measure.noise;
