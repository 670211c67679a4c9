package clipwitness.measure;

import clipwitness.fixture.Said;

/** Reads figures out of a result; a refusal fails the test. */
final class Values {
    private Values() {}

    static double value(WaveformResult result, WaveformQuantity quantity) {
        return result.get(quantity).value().orElseThrow(() -> missing(result, quantity));
    }

    /** Expanded uncertainty. */
    static double uncertainty(WaveformResult result, WaveformQuantity quantity) {
        return result.get(quantity).expandedUncertainty().orElseThrow(() -> missing(result, quantity));
    }

    /** Amplitude of a harmonic over the fundamental. */
    static double relative(WaveformResult result, int order) {
        HarmonicSpectrum spectrum = result.spectrum().orElseThrow();
        return spectrum.amplitude(order) / spectrum.amplitude(1);
    }

    private static AssertionError missing(WaveformResult result, WaveformQuantity quantity) {
        return new AssertionError(
                quantity + ": " + Said.reason(result.get(quantity).reason()).orElse(""));
    }
}
