package clipwitness.signal;

/** Where a curve first rises to a level. */
public sealed interface Crossing {
    /**
     * It does so within the points.
     *
     * @param x where
     */
    record At(double x) implements Crossing {}

    /** The first point already lies on the level or above. */
    record BelowFirst() implements Crossing {}

    /** No part of the curve reaches the level. */
    record NotReached() implements Crossing {}
}
