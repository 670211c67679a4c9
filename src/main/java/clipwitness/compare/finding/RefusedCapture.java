package clipwitness.compare.finding;

import clipwitness.reason.Doubt;
import java.util.List;

/**
 * A capture that gives no figures, and others that give none for the same cause.
 *
 * @param subject its state and condition
 * @param file    its export, as the captures table names it
 * @param doubt   the doubt that refuses it
 * @param others  how many others a doubt of the same kind refuses
 */
public record RefusedCapture(Subject subject, String file, Doubt doubt, int others) implements Finding {
    /** The same with a number of others. */
    public RefusedCapture with(int more) {
        return new RefusedCapture(subject, file, doubt, more);
    }

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
