/**
 * What a template receives: strings, lists, yes and no, made from finished results in the words of the report. In: results,
 * words. Out: {@link clipwitness.report.model.ReportModel}. Knows no page.
 */
package clipwitness.report.model;
