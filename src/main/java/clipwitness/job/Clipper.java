package clipwitness.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The sheet's section {@code clipper}.
 *
 * @param topology           how the clippers stand
 * @param sourceResistance   Ω, shunt clippers
 * @param inputResistance    Ω, feedback clippers
 * @param feedbackResistance Ω, feedback clippers
 * @param outputGain         captured output over clipper node, a ratio
 * @param unclipped          state that shows the source without clippers
 * @param pairs              pair of each state
 */
public record Clipper(
        Topology topology,
        OptionalDouble sourceResistance,
        OptionalDouble inputResistance,
        OptionalDouble feedbackResistance,
        OptionalDouble outputGain,
        Optional<String> unclipped,
        Map<String, ClipperPair> pairs) {
    /** Copies what it is given. */
    public Clipper {
        pairs = Collections.unmodifiableMap(new LinkedHashMap<>(pairs));
    }

    /** How the clippers stand in the circuit. */
    public enum Topology {
        /** From node to ground, fed through a resistance. */
        SHUNT,
        /** Across the feedback resistance of an amplifier. */
        FEEDBACK
    }
}
