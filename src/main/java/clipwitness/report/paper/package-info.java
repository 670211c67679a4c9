/**
 * From a filled page to a PDF: fonts, figures, pictures, attachments, metadata. In: XHTML and what it names. Out:
 * bytes. Knows nothing of waves, jobs or verdicts.
 */
package clipwitness.report.paper;
