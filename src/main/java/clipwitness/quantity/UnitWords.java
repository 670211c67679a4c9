package clipwitness.quantity;

/** What messages call a quantity of some unit, and an example of one. */
record UnitWords(String noun, String example) {
    static UnitWords of(Unit unit) {
        return switch (unit) {
            case VOLT -> new UnitWords("a voltage", "100 mV");
            case AMPERE -> new UnitWords("a current", "8 mA");
            case SECOND -> new UnitWords("a time", "2 µs");
            case OHM -> new UnitWords("a resistance", "2.2 kΩ");
            case CELSIUS -> new UnitWords("a temperature", "21 °C");
            case KELVIN -> new UnitWords("a temperature difference", "3 K");
            case HERTZ -> new UnitWords("a frequency", "1 kHz");
            case DECIBEL -> new UnitWords("a difference of level", "0.5 dB");
            case DBC -> new UnitWords("a level over the fundamental", "-40 dBc");
            case DEGREE -> new UnitWords("an angle", "90 deg");
            case PERCENT -> new UnitWords("a percentage", "3 %");
            case ONE -> new UnitWords("a plain number", "0.71");
        };
    }

    /** How to write such a quantity: a sentence. */
    String advice() {
        return (example.contains(" ") ? "Write a number, a space and the unit" : "Write a number without a unit")
                + ", for example " + example;
    }
}
