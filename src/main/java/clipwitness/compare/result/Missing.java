package clipwitness.compare.result;

import clipwitness.reason.Remark;

/**
 * Something to do at the bench before the unit is opened.
 *
 * @param code  what is missing, or which doubt a capture raises: the name in the results
 * @param what  what to do
 * @param grave whether the captures are not good enough without it
 */
public record Missing(String code, Remark what, boolean grave) {}
