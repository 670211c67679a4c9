/**
 * Results of measuring: {@link clipwitness.measure.Measured} and the values made of it. In: nothing. Out: values that are checked when they are made.
 * The subpackages compute them; none depends on files, the clock or reports.
 */
package clipwitness.measure;
