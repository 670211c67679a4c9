package clipwitness.measure;

/** Figures of a recording of playing: what it is, not what the unit is; {@link #key()} is the name in the results. */
public enum ListeningFigure {
    /** Root mean square about the mean, V or A. */
    RMS("rms"),
    /** Largest magnitude of a sample, V or A. */
    PEAK("peak"),
    /** 20 lg of the rms over full scale, dB: a sine that reaches full scale has -3.01 dB. */
    RMS_LEVEL("rmsLevel"),
    /** 20 lg of the largest magnitude over full scale, dB. */
    PEAK_LEVEL("peakLevel");

    private final String key;

    ListeningFigure(String key) {
        this.key = key;
    }

    /** Name in the results. */
    public String key() {
        return key;
    }
}
