package clipwitness.compare.finding;

import clipwitness.reason.Doubt;
import java.util.List;

/**
 * A capture that gives no figures.
 *
 * @param subject its state and condition
 * @param file    its export, as the captures table names it
 * @param doubt   the doubt that refuses it
 */
public record RefusedCapture(Subject subject, String file, Doubt doubt) implements Finding {
    @Override
    public String code() {
        return "refused";
    }

    @Override
    public String word() {
        return doubt.code().code();
    }

    @Override
    public List<FindingValue> values() {
        return List.of();
    }
}
