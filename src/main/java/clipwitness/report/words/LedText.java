package clipwitness.report.words;

/**
 * Sentences that begin with what they come to.
 *
 * @param lead two to five words, with a full stop; empty where there are none
 * @param text the sentences, without these words
 */
public record LedText(String lead, String text) {}
