/**
 * Templates and the pages that they give. In: a template folder and a model. Out: XHTML, with the files that it names. Independent of waves and
 * verdicts.
 */
package clipwitness.report.page;
