/**
 * What is wrong with the user's input, and where. In: what a reader found. Out: {@link clipwitness.fault.Problem}s with place and remedy,
 * thrown together as one {@link clipwitness.fault.InputException}. Independent of any file format.
 */
package clipwitness.fault;
