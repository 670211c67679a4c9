package clipwitness.measure;

import java.util.ArrayList;
import java.util.List;

/** Values of one figure from many records, against the uncertainty that they state. */
public final class Spread {
    private final List<Measured.Value> values = new ArrayList<>();

    /** Adds a figure, which must not be refused. */
    public void add(Measured figure) {
        values.add(figure.asValue()
                .orElseThrow(() -> new AssertionError(figure.reason().orElse(""))));
    }

    /** Mean of the values. */
    public double mean() {
        return values.stream().mapToDouble(Measured.Value::number).average().orElseThrow();
    }

    /** Standard deviation of the values over the root mean square of their standard uncertainties: 1 where these are right. */
    public double overStated() {
        double mean = mean();
        double squares = 0;
        double stated = 0;
        for (Measured.Value v : values) {
            squares += (v.number() - mean) * (v.number() - mean) / (values.size() - 1);
            stated += v.standardUncertainty() * v.standardUncertainty() / values.size();
        }
        return Math.sqrt(squares / stated);
    }
}
