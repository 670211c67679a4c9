/**
 * Two waves side by side. In: results of two captures. Out: null depth, harmonics at equal level. Sets no limit.
 */
package clipwitness.measure.pair;
