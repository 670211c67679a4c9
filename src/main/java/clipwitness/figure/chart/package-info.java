/**
 * Charts: axes, scales, layers, panels, legends. In: numbers and styles. Out: charts painted on a canvas. Independent of jobs and verdicts.
 */
package clipwitness.figure.chart;
