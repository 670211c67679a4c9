package clipwitness.bench;

/**
 * A junction without leakage path and without capacitance: V = n Vt ln(1 + I/Is) + I Rs, Vt = kT/q.
 *
 * @param saturationCurrent Is in A, above 0; taken as it stands, whatever the temperature
 * @param ideality          n, above 0
 * @param seriesResistance  Rs in Ω, 0 or more
 * @param celsius           temperature in °C, above absolute zero
 */
public record Junction(double saturationCurrent, double ideality, double seriesResistance, double celsius) {
    /** Boltzmann constant over elementary charge, both exact since the SI of 2019, V/K. */
    private static final double VOLTS_PER_KELVIN_SI_2019 = 1.380649e-23 / 1.602176634e-19;

    private static final double ZERO_CELSIUS_IN_KELVIN = 273.15;

    /** Checks the ranges. */
    public Junction {
        if (!(saturationCurrent > 0 && ideality > 0 && seriesResistance >= 0 && celsius > -ZERO_CELSIUS_IN_KELVIN)) {
            throw new IllegalArgumentException("no junction has Is %s A, n %s, Rs %s Ω at %s °C"
                    .formatted(saturationCurrent, ideality, seriesResistance, celsius));
        }
    }

    /** n Vt in V. */
    double slopeVoltage() {
        return ideality * VOLTS_PER_KELVIN_SI_2019 * (celsius + ZERO_CELSIUS_IN_KELVIN);
    }

    /** Terminal voltage in V at a current in A above -Is. */
    double voltageAt(double current) {
        return slopeVoltage() * Math.log1p(current / saturationCurrent) + current * seriesResistance;
    }

    /** Current in A at a terminal voltage in V. */
    double currentAt(double voltage) {
        return ClipperLeg.of(this).currentAt(voltage);
    }
}
