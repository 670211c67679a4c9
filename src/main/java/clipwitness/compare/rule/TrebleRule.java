package clipwitness.compare.rule;

import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Significance;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.finding.Treble;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.StateResponse;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What became of the treble, where both states have a frequency response under one condition: at 3 and 6 kHz, both set equally loud at 1 kHz. Setting the
 * gain control again moves all frequencies alike and cancels. A change counts where it exceeds its uncertainty and can be heard.
 */
final class TrebleRule implements FindingRule {
    private static final double REFERENCE = 1000;
    private static final int[] KILOHERTZ = {3, 6};

    private final JobResults results;

    TrebleRule(JobResults results) {
        this.results = results;
    }

    @Override
    public List<Paragraph> of(Comparison comparison) {
        for (StateResponse from : of(comparison.from())) {
            for (StateResponse to : of(comparison.to())) {
                boolean alike = from.condition().equals(to.condition()) && from.swept() == to.swept();
                List<Treble.Part> parts = alike ? parts(from, to) : List.of();
                if (!parts.isEmpty()) {
                    boolean moved = parts.stream().anyMatch(p -> counts(p.change()));
                    return List.of(
                            new Paragraph(List.of(new Treble(Subject.of(comparison, from.condition()), parts, moved))));
                }
            }
        }
        return List.of();
    }

    private List<StateResponse> of(String state) {
        return results.responses().stream().filter(r -> r.state().equals(state)).toList();
    }

    private static boolean counts(Measured.Value change) {
        return Math.abs(change.number()) >= CommonPractice.HEARD_DECIBELS
                && Significance.exceeds(change.number(), change.expanded());
    }

    private static List<Treble.Part> parts(StateResponse from, StateResponse to) {
        List<Treble.Part> parts = new ArrayList<>();
        for (int kilohertz : KILOHERTZ) {
            change(from, to, kilohertz * REFERENCE).ifPresent(c -> parts.add(new Treble.Part(kilohertz, c)));
        }
        return parts;
    }

    private static Optional<Measured.Value> change(StateResponse from, StateResponse to, double frequency) {
        List<Contribution> budget = new ArrayList<>();
        double sum = 0;
        for (int sign : new int[] {1, -1}) {
            StateResponse state = sign > 0 ? to : from;
            Optional<Measured.Value> high = state.curve().gainAt(frequency);
            Optional<Measured.Value> middle = state.curve().gainAt(REFERENCE);
            if (high.isEmpty() || middle.isEmpty()) {
                return Optional.empty();
            }
            sum += sign * (high.get().number() - middle.get().number());
            budget.addAll(high.get().without(Source.VERTICAL_ACCURACY).budget());
            budget.addAll(middle.get().without(Source.VERTICAL_ACCURACY).budget());
        }
        return Optional.of(new Measured.Value(sum, Unit.DECIBEL, budget, false));
    }
}
