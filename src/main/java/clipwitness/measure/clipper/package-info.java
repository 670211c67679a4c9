/**
 * What a clipping pair does to a sine, from the traced curves of its devices and the resistances of the circuit. In: devices, circuit,
 * drive. Out: the wave and its figures, by the definitions of measured ones. Independent of files, the clock and reports.
 */
package clipwitness.measure.clipper;
