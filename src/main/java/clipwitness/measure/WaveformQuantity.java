package clipwitness.measure;

import clipwitness.quantity.Unit;

/** The figures of a waveform capture; {@link #key()} is the name in the results. Each measure's own file defines it. */
public enum WaveformQuantity {
    /** Refined fundamental frequency. */
    FREQUENCY("frequency", Unit.HERTZ, false),
    /** Mean of the fit. */
    MEAN("mean", Unit.VOLT, false),
    /** Root mean square of the swing. */
    RMS("rms", Unit.VOLT, false),
    /** Peak amplitude of the fundamental. */
    FUNDAMENTAL("fundamental", Unit.VOLT, false),
    /** Upper peak of the mean cycle, from the mean. */
    PEAK_UP("peakUp", Unit.VOLT, false),
    /** Lower peak of the mean cycle, from the mean, positive. */
    PEAK_DOWN("peakDown", Unit.VOLT, false),
    /** Larger peak over rms. */
    CREST_FACTOR("crestFactor", Unit.ONE, false),
    /** Total harmonic distortion over the fundamental. */
    THD("thd", Unit.PERCENT, false),
    /** Distortion and noise. */
    THD_PLUS_NOISE("thdPlusNoise", Unit.PERCENT, false),
    /** Scatter about the mean cycle, rms. */
    NOISE("noise", Unit.VOLT, false),
    /** Difference of the peaks over their sum. */
    ASYMMETRY("asymmetry", Unit.PERCENT, false),
    /** What half-wave symmetry leaves. */
    HALF_WAVE_RESIDUE("halfWaveResidue", Unit.PERCENT, false),
    /** Even harmonics over the fundamental. */
    EVEN_HARMONICS("evenHarmonics", Unit.DBC, false),
    /** Odd harmonics over the fundamental. */
    ODD_HARMONICS("oddHarmonics", Unit.DBC, false),
    /** Harmonics from the eighth up over the fundamental. */
    HIGH_HARMONICS("highHarmonics", Unit.DBC, false),
    /** Share of the period near the upper peak. */
    DWELL_UP("dwellUp", Unit.PERCENT, false),
    /** Share of the period near the lower peak. */
    DWELL_DOWN("dwellDown", Unit.PERCENT, false),
    /** Where the area of the positive half-wave lies. */
    LEAN("lean", Unit.PERCENT, false),
    /** Peak amplitude of the input's fundamental. */
    INPUT_FUNDAMENTAL("inputFundamental", Unit.VOLT, true),
    /** Total harmonic distortion of the input. */
    INPUT_THD("inputThd", Unit.PERCENT, true),
    /** Fundamental over the input's. */
    GAIN("gain", Unit.DECIBEL, true),
    /** Phase of the output over the input at the fundamental. */
    PHASE("phase", Unit.DEGREE, true),
    /** Slope of the transfer curve at its centre. */
    SMALL_SIGNAL_GAIN("smallSignalGain", Unit.DECIBEL, true),
    /** Input at which the output's upper half is 1 dB short. */
    ONSET_UP("onsetUp", Unit.VOLT, true),
    /** Input at which the output's lower half is 1 dB short. */
    ONSET_DOWN("onsetDown", Unit.VOLT, true),
    /** Width of the upper knee. */
    KNEE_UP("kneeUp", Unit.DECIBEL, true),
    /** Width of the lower knee. */
    KNEE_DOWN("kneeDown", Unit.DECIBEL, true),
    /** Upper extreme from the output at the input's mean. */
    CLIP_UP("clipUp", Unit.VOLT, true),
    /** Lower extreme from the output at the input's mean. */
    CLIP_DOWN("clipDown", Unit.VOLT, true),
    /** Difference of the clip levels over their sum. */
    CLIP_ASYMMETRY("clipAsymmetry", Unit.PERCENT, true),
    /** Rms difference of rising and falling branch of the transfer curve over the rms of the swing. */
    BRANCH_GAP("branchGap", Unit.PERCENT, true);

    private final String key;
    private final Unit unit;
    private final boolean needsInput;

    WaveformQuantity(String key, Unit unit, boolean needsInput) {
        this.key = key;
        this.unit = unit;
        this.needsInput = needsInput;
    }

    /** Name in the results. */
    public String key() {
        return key;
    }

    /** Unit of the figure where the channel is in volts. */
    public Unit unit() {
        return unit;
    }

    /** Whether the figure needs an input channel. */
    public boolean needsInput() {
        return needsInput;
    }
}
