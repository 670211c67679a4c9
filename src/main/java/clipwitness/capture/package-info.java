/**
 * What was captured, as values only: samples, waves, curves, where they came from. Knows no file
 * format.
 */
package clipwitness.capture;
