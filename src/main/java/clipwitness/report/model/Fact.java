package clipwitness.report.model;

/**
 * A name and what goes with it.
 *
 * @param name name
 * @param text text
 */
public record Fact(String name, String text) {}
