package clipwitness.measure;

import clipwitness.capture.VerticalRange;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Results that hold some figures and nothing else. */
public final class WaveValues {
    private static final int HARMONICS = 20;

    private WaveValues() {}

    /** A wave of which no more is known than these figures. */
    public static WaveformResult of(Map<WaveformQuantity, Measured> figures) {
        return new WaveformResult(
                figures,
                List.of(),
                HARMONICS,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                VerticalRange.UNKNOWN,
                List.of());
    }
}
