package clipwitness.compare.hint;

/**
 * How far something moved at one setting.
 *
 * @param decibels change in dB
 * @param expanded its expanded uncertainty, dB
 */
record Shift(double decibels, double expanded) {}
