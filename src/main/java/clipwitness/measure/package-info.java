/**
 * Results of measuring: {@link clipwitness.measure.Measured} and the values made of it. In: nothing. Out: values that exist only when valid.
 * The rooms below compute them; none knows a file, a clock or a report.
 */
package clipwitness.measure;
