/**
 * Devices that match. In: measured junctions. Out: mismatches of two, and the best pairs among many. Sets no limit.
 */
package clipwitness.measure.match;
