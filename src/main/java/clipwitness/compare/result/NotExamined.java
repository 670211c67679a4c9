package clipwitness.compare.result;

import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Reason;

/**
 * A quantity that a comparison could not look at.
 *
 * @param quantity which
 * @param reason   why
 */
public record NotExamined(ItemQuantity quantity, Reason reason) {}
