/**
 * Numbers and their text. In: nothing. Out: units, quantities with SI prefixes, decibels, constants, the text
 * of numbers. Knows no capture and no report.
 */
package clipwitness.quantity;
