package clipwitness.compare.result;

/**
 * Something to do at the bench before the unit is opened.
 *
 * @param code  what is missing, or which doubt a capture raises
 * @param text  what to do, a sentence
 * @param grave whether the captures are not good enough without it
 */
public record Missing(String code, String text, boolean grave) {}
