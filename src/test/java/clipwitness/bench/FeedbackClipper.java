package clipwitness.bench;

import java.util.Objects;

/**
 * A clipper across the feedback resistance of an ideal amplifier: v/Rf + I_up(v) - I_down(-v) = x/Rg, then y = x + v, or y = -v
 * where the amplifier inverts.
 *
 * @param inputResistance    Rg in Ω, above 0
 * @param feedbackResistance Rf in Ω, above 0
 * @param pair               legs across Rf
 * @param inverting          whether the amplifier inverts
 */
record FeedbackClipper(double inputResistance, double feedbackResistance, LegPair pair, boolean inverting)
        implements Stage {
    /** Checks the resistances. */
    FeedbackClipper {
        Objects.requireNonNull(pair, "pair");
        if (!(inputResistance > 0 && feedbackResistance > 0)) {
            throw new IllegalArgumentException("both resistances must be above 0 Ω but are %s and %s"
                    .formatted(inputResistance, feedbackResistance));
        }
    }

    /** Across the feedback of a non-inverting amplifier. */
    static FeedbackClipper nonInverting(double inputResistance, double feedbackResistance, LegPair pair) {
        return new FeedbackClipper(inputResistance, feedbackResistance, pair, false);
    }

    /** Across the feedback of an inverting amplifier. */
    static FeedbackClipper inverting(double inputResistance, double feedbackResistance, LegPair pair) {
        return new FeedbackClipper(inputResistance, feedbackResistance, pair, true);
    }

    @Override
    public double outputFor(double drive) {
        double across = pair.voltageBehind(drive * feedbackResistance / inputResistance, feedbackResistance);
        return inverting ? -across : drive + across;
    }
}
