/** Meter readings of the states. In: the job sheet. Out: readings against what is expected or was before, with their decisions. */
package clipwitness.compare.rail;
