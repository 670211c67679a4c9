/**
 * One figure over a control or over level. In: figures with their settings. Out: crossings and slopes. Sets no limit.
 */
package clipwitness.measure.series;
