package clipwitness.compare;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The change of a figure from one setting to another, with its budget. */
final class Change {
    private final Repeatability repeatability;
    private final Drift drift;

    /** Changes in a job in which figures come back so well, and the bench drifts so. */
    Change(Repeatability repeatability, Drift drift) {
        this.repeatability = repeatability;
        this.drift = drift;
    }

    /** Difference of the figures, contributions of equal source combined as independent (JCGM 100, 5.1.2). */
    Measured of(Setting from, Setting to, ItemFigure figure) {
        Measured a = from.figure(figure);
        Measured b = to.figure(figure);
        if (a.asValue().isEmpty()) {
            return Measured.refused(figure.item().unit(), inState(from, a));
        }
        if (b.asValue().isEmpty()) {
            return Measured.refused(figure.item().unit(), inState(to, b));
        }
        Measured.Value x = a.asValue().get();
        Measured.Value y = b.asValue().get();
        List<Contribution> parts = new ArrayList<>(x.budget());
        parts.addAll(y.budget());
        repeatability.of(from, figure).ifPresent(parts::add);
        repeatability.of(to, figure).ifPresent(parts::add);
        if (figure == ItemFigure.LEVEL) {
            parts.addAll(drift.ofLevel(from, to));
        }
        return new Measured.Value(
                figure.difference(y.number(), x.number()), figure.item().unit(), bySource(parts), false);
    }

    /** One contribution a source. */
    static List<Contribution> bySource(List<Contribution> parts) {
        Map<Source, Double> squares = new EnumMap<>(Source.class);
        for (Contribution c : parts) {
            squares.merge(c.source(), c.standardUncertainty() * c.standardUncertainty(), Double::sum);
        }
        return squares.entrySet().stream()
                .map(e -> new Contribution(e.getKey(), Math.sqrt(e.getValue())))
                .toList();
    }

    private static String inState(Setting setting, Measured refused) {
        Optional<String> reason = refused.reason();
        return "in " + setting.quoted() + ": " + reason.orElseThrow();
    }
}
