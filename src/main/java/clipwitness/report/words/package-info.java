/**
 * Sentences from figures, and figures as text. In: finished results. Out: strings. A sentence claims only what its figures
 * show. Independent of pages.
 */
package clipwitness.report.words;
