/**
 * The words of everything that the program says about results. In: phrases with arguments, and words.properties. Out: sentences in one language.
 * Decides nothing and knows no result.
 */
package clipwitness.words;
