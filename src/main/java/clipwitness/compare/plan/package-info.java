/**
 * What to capture on the bench so that the limits wanted can be kept: captures of a model unit, judged by the rules of {@link
 * clipwitness.compare.ready}. In: a job sheet. Out: {@link clipwitness.compare.plan.BenchPlan}.
 */
package clipwitness.compare.plan;
