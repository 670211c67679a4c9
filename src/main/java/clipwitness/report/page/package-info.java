/**
 * Templates and the pages that they give. In: a template folder and a model. Out: XHTML, with the files that it names. Knows no wave and no
 * verdict.
 */
package clipwitness.report.page;
