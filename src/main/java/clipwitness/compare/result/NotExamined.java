package clipwitness.compare.result;

/**
 * A quantity that a comparison could not look at.
 *
 * @param quantity which
 * @param reason   why, a clause
 */
public record NotExamined(ItemQuantity quantity, String reason) {}
