/**
 * What a template receives: strings, lists, yes and no. In: nothing. Out: {@link clipwitness.report.model.ReportModel}. Knows no result and
 * no page.
 */
package clipwitness.report.model;
