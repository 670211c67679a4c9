package clipwitness.compare.finding;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where distortion begins over the gain control.
 *
 * @param subject     states, and the condition of the series, gain left open
 * @param markPercent the distortion that counts as begun, percent
 * @param kind        what is said of it
 * @param from        setting of the mark in the earlier state, percent of rotation
 * @param to          setting of the mark in the later state, percent of rotation
 * @param halves      halves of the wave that begin to clip elsewhere though the mark stays; only with {@link Kind#SAME}
 */
public record Onset(
        Subject subject, double markPercent, Kind kind, Measured from, Measured to, Optional<OtherHalves> halves)
        implements Finding {

    /** Two places on the gain control that lie farther apart than this are not told as one, percent of rotation. */
    private static final double ONE_PLACE_PERCENT = 5;

    /** Nor are two whose distance is known to no better than this, percent of rotation: half of what leaves a single place to be told. */
    private static final double ONE_PLACE_KNOWN_PERCENT = 10;

    /** Where the later state reaches the mark. */
    public enum Kind {
        /** At a lower setting. */
        EARLIER,
        /** At a higher setting. */
        LATER,
        /** Where the earlier state does, within the uncertainty. */
        SAME,
        /** Nowhere, though the earlier state does. */
        NEVER,
        /** Somewhere, though the earlier state does not. */
        NEW,
        /** Below the lowest setting captured, the earlier state above it. */
        BELOW,
        /** Above the lowest setting captured, the earlier state below it. */
        ABOVE;

        /** Name in the results and of the sentence. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Whether both places are known, lie close together, and how close is known well. */
    public boolean isOnePlace() {
        return from.asValue()
                .flatMap(f -> to.asValue().map(t -> Difference.of(f, t)))
                .filter(d -> Math.abs(d.change()) <= ONE_PLACE_PERCENT && d.uncertainty() <= ONE_PLACE_KNOWN_PERCENT)
                .isPresent();
    }

    @Override
    public String code() {
        return "onset";
    }

    @Override
    public String word() {
        return kind.code();
    }

    @Override
    public List<FindingValue> values() {
        List<FindingValue> values = new ArrayList<>();
        values.add(FindingValue.stated("thd", markPercent, Unit.PERCENT));
        from.asValue().ifPresent(v -> values.add(FindingValue.of("fromGainPercent", v)));
        to.asValue().ifPresent(v -> values.add(FindingValue.of("toGainPercent", v)));
        halves.ifPresent(h -> values.addAll(h.values()));
        return values;
    }
}
