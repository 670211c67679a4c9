/**
 * Numbers and their text. In: nothing. Out: units, quantities with SI prefixes, decibels, constants, the text
 * of numbers, the names of the changes that can be judged and their usual limits. Outside: captures and reports.
 */
package clipwitness.quantity;
