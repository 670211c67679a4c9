package clipwitness.measure.noise;

/** Figures of the noise of a record; {@link #key()} is the name in the results. */
public enum NoiseFigure {
    /** Root mean square in the band, hum included. */
    RMS("rms"),
    /** The same, weighted as the ear hears: {@link AWeighting}. */
    A_WEIGHTED("aWeighted");

    private final String key;

    NoiseFigure(String key) {
        this.key = key;
    }

    /** Name in the results. */
    public String key() {
        return key;
    }

    /** Weight of a frequency, as a power. */
    double weight(double frequency) {
        return this == RMS ? 1 : AWeighting.power(frequency);
    }
}
