/**
 * Why something is refused, doubted or advised: codes with typed arguments. In: numbers, counts and names. Out: values that decisions may look
 * into. Independent of the sentences: those are in words.properties, and package {@code words} combines the two.
 */
package clipwitness.reason;
