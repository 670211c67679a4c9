/**
 * Finds what the figures of a job say. In: the results of a job, measured and judged. Out: {@link clipwitness.compare.finding.Finding findings}.
 * Every threshold that a sentence or a picture rests on is here or in {@link clipwitness.compare.finding.Significance}; words, numbers as
 * text and pictures are elsewhere.
 */
package clipwitness.compare.rule;
