/**
 * What the figures of a job can say: {@link clipwitness.compare.finding.Finding findings}, values with a code and the figures that they rest on,
 * and when a change counts as one. In: items and measured values. Out: records that words, pictures and results render. Independent of the words.
 */
package clipwitness.compare.finding;
