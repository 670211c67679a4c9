/**
 * Charts: axes, scales, layers, panels, legends. In: numbers and styles. Out: paint on a canvas. Knows no job and no verdict.
 */
package clipwitness.figure.chart;
