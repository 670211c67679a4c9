/**
 * Makes what a template receives. In: finished results and words. Out: {@link clipwitness.report.model.ReportModel}. Independent of pages.
 */
package clipwitness.report.build;
