/**
 * Noise and hum of the states of a job. In: measured captures of noise. Out: what each state has, changes and their decisions, which mains the captures
 * show.
 */
package clipwitness.compare.noise;
