package clipwitness.compare.response;

import clipwitness.compare.judge.Change;
import clipwitness.compare.noise.InputGain;
import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.response.ResponsePoint;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The change of the gain at one frequency, dB, with its budget.
 *
 * @param value the change
 * @param stays share of the first state in the variance of each source
 */
record ResponseChange(Measured value, Map<Source, Double> stays) {
    /**
     * The change of a pair.
     *
     * @param accuracy bound of the instrument's vertical accuracy, a ratio, for states captured at different ranges
     */
    static ResponseChange at(ResponsePair pair, double frequency, InputGain gain, double accuracy) {
        ResponsePoint before = pair.from().curve().at(frequency).orElseThrow();
        ResponsePoint after = pair.to().curve().at(frequency).orElseThrow();
        Optional<Measured.Value> a = before.gain().asValue();
        Optional<Measured.Value> b = after.gain().asValue();
        if (a.isEmpty() || b.isEmpty()) {
            ResponseAtCondition refused = a.isEmpty() ? pair.from() : pair.to();
            Reason why = (a.isEmpty() ? before : after).gain().reason().orElseThrow();
            return new ResponseChange(
                    Measured.refused(
                            Unit.DECIBEL, Reason.of(FrameReason.IN_STATE, refused.name(), Argument.inner(why))),
                    Map.of());
        }
        List<Contribution> first = parts(a.get(), pair.from(), gain);
        List<Contribution> second = parts(b.get(), pair.to(), gain);
        List<Contribution> all = new ArrayList<>(first);
        all.addAll(second);
        if (pair.from().differsInRange(pair.to())) {
            double relative = accuracy * Math.sqrt(2) / Math.sqrt(3);
            all.add(new Contribution(Source.VERTICAL_ACCURACY, Decibels.PER_RELATIVE_AMPLITUDE * relative));
        }
        return new ResponseChange(
                new Measured.Value(b.get().number() - a.get().number(), Unit.DECIBEL, Budget.bySource(all), false),
                Change.shares(first, second));
    }

    /** A gain at one range cancels the vertical accuracy of both channels; setting the control again does not cancel. */
    private static List<Contribution> parts(Measured.Value point, ResponseAtCondition setting, InputGain gain) {
        List<Contribution> parts =
                new ArrayList<>(point.without(Source.VERTICAL_ACCURACY).budget());
        parts.addAll(gain.control(setting.state(), setting.condition()));
        return parts;
    }
}
