package clipwitness.job;

/**
 * A clipping pair.
 *
 * @param up   leg that conducts on positive node voltage
 * @param down the other leg
 */
public record ClipperPair(Leg up, Leg down) {}
