/**
 * Results for programs: JSON and CSV. In: finished results. Out: text. Computes and judges nothing.
 */
package clipwitness.report.data;
