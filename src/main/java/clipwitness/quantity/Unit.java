package clipwitness.quantity;

/** Units that results are given in; {@link #symbol()} is how they are written in the results and on paper. */
public enum Unit {
    /** Voltage. */
    VOLT("V"),
    /** Current. */
    AMPERE("A"),
    /** Time. */
    SECOND("s"),
    /** Resistance. */
    OHM("Ω"),
    /** Temperature on the Celsius scale. */
    CELSIUS("°C"),
    /** Temperature difference. */
    KELVIN("K"),
    /** Frequency. */
    HERTZ("Hz"),
    /** Level difference, 20 lg of an amplitude ratio. */
    DECIBEL("dB"),
    /** Level over the fundamental of the same wave, 20 lg of an amplitude ratio. */
    DBC("dBc"),
    /** Phase angle. */
    DEGREE("deg"),
    /** Hundredth part. */
    PERCENT("%"),
    /** Pure number. */
    ONE("1");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** The unit's symbol, {@code "1"} for a pure number. */
    public String symbol() {
        return symbol;
    }
}
