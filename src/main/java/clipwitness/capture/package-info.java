/**
 * What was captured, as values only: samples, waves, curves, where they came from and what is doubtful about
 * them. Knows no file format.
 */
package clipwitness.capture;
