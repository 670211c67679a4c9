package clipwitness.report.model;

/**
 * A mark of the first page.
 *
 * @param kind   pass, fail, undecided, described, or missing where nothing was examined
 * @param sign   its sign
 * @param name   what it is about
 * @param word   the decision in a word
 * @param figure the figure that tells most, empty where there is none
 */
public record ShownMark(String kind, String sign, String name, String word, String figure) {}
