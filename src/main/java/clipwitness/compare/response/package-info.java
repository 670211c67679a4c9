/**
 * Frequency response of the states, and its changes. In: captures of steady sines and sweeps. Out: curves, items, doubts. Does not know pages.
 */
package clipwitness.compare.response;
