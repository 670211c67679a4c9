/**
 * Frequency response. In: a record with input and output. Out: gain and phase over frequency, each with its uncertainty and coherence. Knows nothing of
 * other captures.
 */
package clipwitness.measure.response;
