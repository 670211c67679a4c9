/**
 * A small bench for tests and demonstration data: junctions, clipping stages, filters, a gain control, an oscilloscope, a curve
 * tracer and the exports they write. Written apart from the program, so that it can bear witness; uses nothing of it but values.
 */
package clipwitness.bench;
