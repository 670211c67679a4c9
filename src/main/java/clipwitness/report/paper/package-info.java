/**
 * From a filled page to a PDF: fonts, figures, pictures, attachments, metadata. In: XHTML and what it names. Out:
 * bytes. Independent of waves, jobs and verdicts.
 */
package clipwitness.report.paper;
