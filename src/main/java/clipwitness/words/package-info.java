/**
 * The words of everything that the program says about results. In: phrases with arguments, and words.properties. Out: sentences in one language.
 * Does not decide; independent of results.
 */
package clipwitness.words;
