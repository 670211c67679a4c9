/**
 * What a template receives: strings, lists, yes and no. In: nothing. Out: {@link clipwitness.report.model.ReportModel}. Independent of results
 * and pages.
 */
package clipwitness.report.model;
