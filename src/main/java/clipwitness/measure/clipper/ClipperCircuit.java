package clipwitness.measure.clipper;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** The circuit around a clipping pair. */
public sealed interface ClipperCircuit {
    /** The pair. */
    ClippingPair pair();

    /** Output, V, at a source voltage, V. */
    double outputAt(double source);

    /** Slope of the output over the source at 0 V, the load of the pair's slope there included; below 0 where the circuit inverts. */
    double smallSignalGain();

    /** Slope of the output over the source without the pair. */
    double gainWithoutPair();

    /** The part of the source that reaches the output beside what the pair makes of it: the output is this times the source plus the clipped part. */
    double passed();

    /**
     * The clipped part of the output, V, over the source, V.
     *
     * @param highest highest magnitude of the source that will be asked for, V, above 0
     */
    DoubleUnaryOperator clipped(double highest);

    /**
     * The output, V, over the source, V: that of {@link #outputAt} from a table, for waves of many values.
     *
     * @param highest highest magnitude of the source that will be asked for, V, above 0
     */
    default DoubleUnaryOperator output(double highest) {
        DoubleUnaryOperator clipped = clipped(highest);
        return x -> passed() * x + clipped.applyAsDouble(x);
    }

    /** The same circuit with its resistances changed: each times a factor above 0. */
    ClipperCircuit withResistances(double factor);

    /** The same circuit with another pair. */
    ClipperCircuit with(ClippingPair other);

    /**
     * Pair from node to ground, fed through a resistance: (Vs - v) / R = I(v); the output is v.
     *
     * @param pair pair
     * @param source source resistance R, Ω, above 0
     */
    record Shunt(ClippingPair pair, double source) implements ClipperCircuit {
        /** Checks the resistance. */
        public Shunt {
            requirePositive(source);
        }

        @Override
        public double outputAt(double voltage) {
            return pair.voltageAt(voltage / source, 1 / source);
        }

        @Override
        public double smallSignalGain() {
            return 1 / (1 + source * pair.conductanceAtZero());
        }

        @Override
        public double gainWithoutPair() {
            return 1;
        }

        @Override
        public double passed() {
            return 0;
        }

        @Override
        public DoubleUnaryOperator clipped(double highest) {
            NodeTable table = new NodeTable(pair, 1 / source, highest / source);
            return u -> table.at(u / source);
        }

        @Override
        public Shunt withResistances(double factor) {
            return new Shunt(pair, factor * source);
        }

        @Override
        public Shunt with(ClippingPair other) {
            return new Shunt(other, source);
        }
    }

    /**
     * Pair across the feedback resistance of an amplifier: v / Rf + I(v) = x / Rg; the output is x + v, or -v where it inverts.
     *
     * @param pair      pair; the leg called up conducts on positive v
     * @param input     Rg, Ω, above 0
     * @param feedback  Rf, Ω, above 0
     * @param inverting whether the amplifier inverts
     */
    record Feedback(ClippingPair pair, double input, double feedback, boolean inverting) implements ClipperCircuit {
        /** Checks the resistances. */
        public Feedback {
            requirePositive(input);
            requirePositive(feedback);
        }

        @Override
        public double outputAt(double x) {
            return output(x, pair.voltageAt(x / input, 1 / feedback));
        }

        private double output(double x, double v) {
            return inverting ? -v : x + v;
        }

        @Override
        public double smallSignalGain() {
            return output(1, 1 / input / (1 / feedback + pair.conductanceAtZero()));
        }

        @Override
        public double gainWithoutPair() {
            return output(1, feedback / input);
        }

        @Override
        public double passed() {
            return inverting ? 0 : 1;
        }

        @Override
        public DoubleUnaryOperator clipped(double highest) {
            NodeTable table = new NodeTable(pair, 1 / feedback, highest / input);
            return x -> (inverting ? -1 : 1) * table.at(x / input);
        }

        /**
         * The stage whose feedback resistance gives it another gain, the input resistance as it is; nothing where none does.
         *
         * @param gain        slope of the output over the source, its sign left out
         * @param conductance of the pair at 0 V where the gain is that for small signals, S; 0 where it is that without pair
         */
        public Optional<Feedback> withFeedbackFor(double gain, double conductance) {
            double across = inverting ? gain : gain - 1;
            double ohms = 1 / (1 / (input * across) - conductance);
            return across > 0 && ohms > 0 && ohms < Double.POSITIVE_INFINITY
                    ? Optional.of(new Feedback(pair, input, ohms, inverting))
                    : Optional.empty();
        }

        /** The same with the input resistance, the feedback resistance as it is. */
        public Optional<Feedback> withInputFor(double gain, double conductance) {
            double across = inverting ? gain : gain - 1;
            double ohms = 1 / (across * (1 / feedback + conductance));
            return across > 0 && ohms > 0 && ohms < Double.POSITIVE_INFINITY
                    ? Optional.of(new Feedback(pair, ohms, feedback, inverting))
                    : Optional.empty();
        }

        @Override
        public Feedback withResistances(double factor) {
            return new Feedback(pair, factor * input, factor * feedback, inverting);
        }

        @Override
        public Feedback with(ClippingPair other) {
            return new Feedback(other, input, feedback, inverting);
        }
    }

    private static void requirePositive(double resistance) {
        if (!(resistance > 0 && resistance < Double.POSITIVE_INFINITY)) { // NaN lands here too
            throw new IllegalArgumentException("a resistance must be above 0 Ω but is " + resistance);
        }
    }
}
