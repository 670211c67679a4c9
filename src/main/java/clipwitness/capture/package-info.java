/**
 * What was captured, as values only: samples, waves, curves, where they came from. Independent of file
 * formats.
 */
package clipwitness.capture;
