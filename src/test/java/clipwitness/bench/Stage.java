package clipwitness.bench;

/** A stage without memory. */
public interface Stage extends Block {
    /** Output in V for a drive in V. */
    double outputFor(double drive);

    @Override
    default Cycle of(Cycle cycle) {
        return cycle.map(this::outputFor);
    }
}
