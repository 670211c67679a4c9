package clipwitness.bench;

/** A stage without memory. */
@FunctionalInterface
interface Stage {
    /** Output in V for a drive in V. */
    double outputFor(double drive);
}
