package clipwitness.bench;

/** Anything between two nodes of an effect, with memory or without. */
@FunctionalInterface
public interface Block {
    /** What one period becomes once everything has settled. */
    Cycle of(Cycle cycle);
}
