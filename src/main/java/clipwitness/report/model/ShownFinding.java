package clipwitness.report.model;

/**
 * A finding on the first page.
 *
 * @param lead what it comes to, in two to five words with a full stop; empty where it has none
 * @param text the sentences behind it
 */
public record ShownFinding(String lead, String text) {}
