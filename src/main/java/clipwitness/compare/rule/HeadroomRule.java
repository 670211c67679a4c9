package clipwitness.compare.rule;

import clipwitness.compare.finding.Headroom;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.JobResults;
import clipwitness.job.Rail;
import clipwitness.job.RailReading;
import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Quantity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the largest wave of a state comes so near its rails that these may clip it, not the clippers: amplifiers of effects stay up to 2 V short of each
 * rail (common practice). A captured wave that was made smaller behind the amplifier says nothing, so no wave is called far from the rails.
 */
final class HeadroomRule implements FindingRule {
    private static final double SHORT_OF_A_RAIL = 2;
    private static final double LEAST_SHARE = 0.5;

    private final JobResults results;

    HeadroomRule(JobResults results) {
        this.results = results;
    }

    private record Swing(CaptureResult capture, Measured.Value volts) {}

    @Override
    public List<Paragraph> of(Comparison comparison) {
        OptionalDouble span = span(comparison.to());
        Optional<Swing> swing = swing(comparison.to());
        if (span.isEmpty() || swing.isEmpty() || !isNear(swing.get().volts().number(), span.getAsDouble())) {
            return List.of();
        }
        Subject subject = Subject.of(comparison, swing.get().capture().row().condition());
        return List.of(new Paragraph(List.of(new Headroom(subject, swing.get().volts(), span.getAsDouble()))));
    }

    private static boolean isNear(double swing, double span) {
        return swing >= Math.max(LEAST_SHARE * span, span - 2 * SHORT_OF_A_RAIL);
    }

    /** From the lowest rail, or ground, to the highest, as they were read in a state. */
    private OptionalDouble span(String state) {
        double low = 0;
        double high = 0;
        for (Rail rail : results.job().sheet().rails()) {
            Optional<Quantity> volts = Optional.ofNullable(rail.readings().get(state))
                    .map(RailReading::quantity)
                    .filter(q -> q.unit() == Unit.VOLT);
            if (volts.isPresent()) {
                low = Math.min(low, volts.get().value());
                high = Math.max(high, volts.get().value());
            }
        }
        return high > low ? OptionalDouble.of(high - low) : OptionalDouble.empty();
    }

    private Optional<Swing> swing(String state) {
        return results.captures().stream()
                .filter(c -> c.row().state().filter(state::equals).isPresent())
                .flatMap(c -> c.waveform().flatMap(HeadroomRule::swing).map(v -> new Swing(c, v)).stream())
                .max(Comparator.comparingDouble(s -> s.volts().number()));
    }

    private static Optional<Measured.Value> swing(WaveformResult wave) {
        Optional<Measured.Value> up = wave.get(WaveformQuantity.PEAK_UP).asValue();
        Optional<Measured.Value> down = wave.get(WaveformQuantity.PEAK_DOWN).asValue();
        if (up.isEmpty() || down.isEmpty()) {
            return Optional.empty();
        }
        List<Contribution> parts = new ArrayList<>(up.get().budget());
        parts.addAll(down.get().budget());
        return Optional.of(
                new Measured.Value(up.get().number() + down.get().number(), Unit.VOLT, Budget.bySource(parts), false));
    }
}
