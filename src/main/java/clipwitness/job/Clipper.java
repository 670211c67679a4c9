package clipwitness.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The sheet's section {@code clipper}.
 *
 * @param topology           how the clippers stand
 * @param sourceResistance   Ω, shunt clippers
 * @param inputResistance    Ω, feedback clippers
 * @param feedbackResistance Ω, feedback clippers
 * @param gainControl        what the gain control is
 * @param outputGain         captured output over clipper node, a ratio
 * @param unclipped          state that shows the source without clippers
 * @param cleanPath          whether a part of the signal goes round the clipper, how much is not known
 * @param pairs              pair of each state
 */
public record Clipper(
        Topology topology,
        OptionalDouble sourceResistance,
        OptionalDouble inputResistance,
        OptionalDouble feedbackResistance,
        GainControl gainControl,
        OptionalDouble outputGain,
        Optional<String> unclipped,
        boolean cleanPath,
        Map<String, ClipperPair> pairs) {
    /** Copies what it is given. */
    public Clipper {
        Objects.requireNonNull(gainControl, "gainControl");
        pairs = Collections.unmodifiableMap(new LinkedHashMap<>(pairs));
    }

    /** How the clippers stand in the circuit. */
    public enum Topology {
        /** From node to ground, fed through a resistance. */
        SHUNT,
        /** Across the feedback resistance of an amplifier. */
        FEEDBACK
    }

    /** What the gain control of the unit is to the clipper. */
    public enum GainControl {
        /** It sets the level ahead of the clipper, and no resistance of it. */
        SERIES,
        /** It is the feedback resistance; the sheet states it as at full gain. */
        FEEDBACK,
        /** It is the input resistance; the sheet states it as at full gain. */
        INPUT
    }
}
