/**
 * Makes what a template receives. In: finished results and words. Out: {@link clipwitness.report.model.ReportModel}. Knows no page.
 */
package clipwitness.report.build;
