/**
 * How changes are judged. In: measured figures of two states. Out: items with change, uncertainty, limit and decision. Knows no word of the
 * report.
 */
package clipwitness.compare.judge;
