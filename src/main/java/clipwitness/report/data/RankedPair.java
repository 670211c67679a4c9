package clipwitness.report.data;

import clipwitness.compare.device.ClipForecast;
import clipwitness.measure.match.MatchedPair;
import java.util.Objects;
import java.util.Optional;

/**
 * A pair of a ranking.
 *
 * @param pair     pair
 * @param forecast what it would clip at, where the clipper is known
 */
public record RankedPair(MatchedPair pair, Optional<ClipForecast.Forecast> forecast) {
    /** Checks that both are there. */
    public RankedPair {
        Objects.requireNonNull(pair, "pair");
        Objects.requireNonNull(forecast, "forecast");
    }
}
