/**
 * Finds what the figures of a job say. In: the results of a job, measured and judged. Out: {@link clipwitness.compare.finding.Finding findings}.
 * Every threshold that a sentence or a picture rests on stands here and in {@link clipwitness.compare.finding.Significance}; words, numbers as
 * text and pictures do not.
 */
package clipwitness.compare.rule;
