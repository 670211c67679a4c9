package clipwitness.measure.junction;

/** Thermal voltage Vt = k T / q of a junction. */
final class ThermalVoltage {
    /** Boltzmann constant over elementary charge, both exact since the SI of 2019: 1.380649e-23 J/K over 1.602176634e-19 C. */
    private static final double VOLTS_PER_KELVIN_SI_2019 = 1.380649e-23 / 1.602176634e-19;

    /** 0 °C in K, exact by definition. */
    static final double ZERO_CELSIUS = 273.15;

    private ThermalVoltage() {}

    /** Vt in V at a temperature in °C; 25.69 mV at 25 °C. */
    static double at(double celsius) {
        return VOLTS_PER_KELVIN_SI_2019 * (celsius + ZERO_CELSIUS);
    }
}
