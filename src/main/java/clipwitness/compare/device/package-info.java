/**
 * Traced devices against the captured wave. In: junctions, the sheet's clipper, captures. Out: pairs and predictions.
 */
package clipwitness.compare.device;
