/**
 * Sentences from figures, and figures as text. In: finished results. Out: strings. Claims no more than the figures;
 * knows no page.
 */
package clipwitness.report.words;
