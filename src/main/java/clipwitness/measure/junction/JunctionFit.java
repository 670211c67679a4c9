package clipwitness.measure.junction;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The model fitted to a traced curve.
 *
 * @param model             the model with the fitted figures; its series resistance is 0 or more
 * @param saturationCurrent Is, A
 * @param ideality          n, a ratio
 * @param seriesResistance  Rs, Ω; at most so much where it does not exceed its uncertainty
 * @param shuntResistance   Rp, Ω; refused where the data show none
 * @param correlations      correlation of two figures by {@code name-name}, -1 to 1
 * @param currents          currents of the points that count, A
 * @param residuals         voltage of each less the model's, V
 * @param scatter           root mean square of the residuals, V
 */
public record JunctionFit(
        JunctionModel model,
        Measured saturationCurrent,
        Measured ideality,
        Measured seriesResistance,
        Measured shuntResistance,
        Map<String, Double> correlations,
        Samples currents,
        Samples residuals,
        double scatter) {
    /** Copies what it is given. */
    public JunctionFit {
        Objects.requireNonNull(model, "model");
        if (!(model.seriesResistance() >= 0)) {
            throw new IllegalArgumentException("no resistance: " + model.seriesResistance() + " Ω");
        }
        correlations = Collections.unmodifiableMap(new LinkedHashMap<>(correlations));
        if (currents.size() != residuals.size()) {
            throw new IllegalArgumentException("a residual for each current");
        }
    }

    /** The four figures by their names in the results. */
    public Map<String, Measured> figures() {
        Map<String, Measured> figures = new LinkedHashMap<>();
        List<Measured> values = List.of(saturationCurrent, ideality, seriesResistance, shuntResistance);
        for (int i = 0; i < NAMES.size(); i++) {
            figures.put(NAMES.get(i), values.get(i));
        }
        return figures;
    }

    /** Names of the figures in the results. */
    public static final List<String> NAMES =
            List.of("saturationCurrent", "ideality", "seriesResistance", "shuntResistance");
}
