package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Headings as circuit simulators write them, all in units without prefix: {@code V(out)} and {@code V(a,b)} for voltages, {@code I(R1)},
 * {@code Ic(Q1)} and {@code Ix(U1:out)} for currents into a terminal, sums and differences of them, {@code v1#branch}, {@code @d1[id]}.
 */
final class SimulatedName {
    private static final String OF = "\\([^()]+(?:\\([^()]*\\)[^()]*)?\\)";
    private static final String VOLTS = "[vu]" + OF;
    private static final String AMPERES = "i[abcdegksx]?" + OF;
    private static final String EITHER = "(?:" + VOLTS + "|" + AMPERES + ")";
    private static final Pattern VOLTAGE = sum(VOLTS + "|@[\\w.:]+\\[v\\w{0,3}]");
    private static final Pattern CURRENT = sum(AMPERES + "|@[\\w.:]+\\[i\\w{0,2}]|[\\w.:]+#branch");
    /** Power, resistance, gain. */
    private static final Pattern PRODUCT =
            Pattern.compile("[-+]?\\s*" + EITHER + "(?:\\s*[-+*/]\\s*" + EITHER + ")+", Pattern.CASE_INSENSITIVE);

    private SimulatedName() {}

    /** Unit of the values below such a heading, {@link Unit#ONE} for products and ratios; empty where the heading is none. */
    static Optional<Unit> unit(String heading) {
        if (VOLTAGE.matcher(heading).matches()) {
            return Optional.of(Unit.VOLT);
        }
        if (CURRENT.matcher(heading).matches()) {
            return Optional.of(Unit.AMPERE);
        }
        return PRODUCT.matcher(heading).matches() ? Optional.of(Unit.ONE) : Optional.empty();
    }

    private static Pattern sum(String term) {
        return Pattern.compile("[-+]?\\s*(?:" + term + ")(?:\\s*[-+]\\s*(?:" + term + "))*", Pattern.CASE_INSENSITIVE);
    }
}
