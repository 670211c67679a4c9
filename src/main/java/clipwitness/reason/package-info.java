/**
 * Why something is refused, doubted or advised: codes with typed arguments. In: numbers, counts and names. Out: values that decisions may look
 * into. Knows no sentence: what a code is called in words stands in words.properties, and package {@code words} puts the two together.
 */
package clipwitness.reason;
