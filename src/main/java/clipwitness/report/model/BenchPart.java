package clipwitness.report.model;

import java.util.List;

/**
 * Where and with what was measured.
 *
 * @param conditions  temperature, mains, load and the bounds that enter the uncertainty
 * @param instruments instruments
 * @param stimulus    the test tone in a sentence
 * @param settings    positions of all other controls
 * @param states      the states and what each is for
 */
public record BenchPart(
        List<Fact> conditions, List<Fact> instruments, String stimulus, List<Fact> settings, List<Fact> states) {
    /** Copies what it is given. */
    public BenchPart {
        conditions = List.copyOf(conditions);
        instruments = List.copyOf(instruments);
        settings = List.copyOf(settings);
        states = List.copyOf(states);
    }
}
