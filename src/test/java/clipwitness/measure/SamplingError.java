package clipwitness.measure;

import clipwitness.signal.ReferenceRow;

/** What plain sampling does to the exact figures of a wave, worst of 64 phases: sampling-error.csv. */
final class SamplingError {
    private final ReferenceRow row;

    private SamplingError(ReferenceRow row) {
        this.row = row;
    }

    static SamplingError of(String waveform, int samplesPerCycle) {
        return new SamplingError(ReferenceRow.of(SamplingError.class, "sampling-error.csv")
                .filter(r -> r.text("waveform").equals(waveform))
                .filter(r -> r.number("samples per cycle") == samplesPerCycle)
                .findFirst()
                .orElseThrow());
    }

    /** Of a harmonic over the fundamental, up to the tenth. */
    double harmonic() {
        return Math.max(1e-12, row.number("worst error of H2..H10 relative to H1"));
    }

    /** Of the distortion, a ratio. */
    double thd() {
        return Math.max(1e-7, row.number("worst error of THD_F from total power"));
    }

    /** Of the share of the period near the extremes. */
    double dwell() {
        return row.number("worst error of dwell share");
    }

    double crest() {
        return row.number("worst error of crest factor");
    }
}
