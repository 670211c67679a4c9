/**
 * Before the unit is opened: what the captures made so far can show. In: captures of the states before the work. Out:
 * {@link clipwitness.compare.result.ReadyResult}.
 */
package clipwitness.compare.ready;
