/**
 * One job from folder to outcome, and many of them. In: job folders. Out: outcomes. Prints nothing.
 */
package clipwitness.batch;
