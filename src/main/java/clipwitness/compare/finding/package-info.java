/**
 * What the figures of a job say. In: the results of a job, measured and judged. Out: {@link clipwitness.compare.finding.Finding findings}, values
 * with a code and the figures that they rest on. Every threshold that a sentence or a picture rests on stands here; words, numbers as text and
 * pictures do not.
 */
package clipwitness.compare.finding;
