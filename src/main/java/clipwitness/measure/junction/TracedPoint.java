package clipwitness.measure.junction;

/**
 * One point of a traced curve, forward direction positive.
 *
 * @param volts        V
 * @param amperes      A
 * @param voltsSigma   standard uncertainty, V
 * @param amperesSigma standard uncertainty, A
 */
record TracedPoint(double volts, double amperes, double voltsSigma, double amperesSigma) {
    /** Uncertainty of the point in voltage, V, where the curve has a resistance of so many Ω. */
    double sigma(double resistance) {
        return Math.hypot(voltsSigma, resistance * amperesSigma);
    }

    TracedPoint turned(double voltsSign, double amperesSign) {
        return new TracedPoint(voltsSign * volts, amperesSign * amperes, voltsSigma, amperesSigma);
    }
}
