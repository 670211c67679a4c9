/**
 * Which columns of an export are meant. In: an export and what the user named. Out: input and output, or voltage and current. Measures
 * nothing.
 */
package clipwitness.batch.choice;
