package clipwitness.job;

/**
 * The sheet's section {@code unit}; texts are empty where the sheet has none.
 *
 * @param name   what it is
 * @param maker  who made it
 * @param serial serial number
 * @param supply supply, as written
 */
public record UnitUnderTest(String name, String maker, String serial, String supply) {}
