package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;

/**
 * One half of the wave goes on rising where the other clips. Peaks, clip levels (where the transfer curve is one) and the time that each
 * half spends near its peak have to agree on it, and the unit must not have done so before.
 *
 * <p>An unchanged state is compared with the one before, setting by setting: at a third and more of the settings that clipped, and at none
 * the other way round, the peaks of the halves must have moved apart by a quarter, the clip levels by half beyond their uncertainty, and the
 * half that goes on must stay near its peak for less than seven tenths of the time of the other; at the highest setting it must do so, too,
 * or be louder by 9 dB, for a stage that runs out of supply clips both halves there. A changed state may have unlike legs: there the clip levels have to grow apart by half
 * from the middle to the highest gain (an open leg 4.3 times, a one-to-two pair 1.13).
 */
final class OneSideNotClipping implements HintRule {
    private static final double PEAKS = Math.log(1.25);
    private static final double CLIPS = Math.log(1.5);
    private static final double DWELL = 0.7;
    private static final double SHARE = 1.0 / 3;
    private static final double LOUDER_DB = 9;

    @Override
    public List<Hint> look(Evidence evidence) {
        return Symptom.hints(evidence.compared().stream()
                .filter(s -> !evidence.hasOpenLeg(s))
                .flatMap(s -> look(evidence, s).stream())
                .toList());
    }

    private static Optional<Symptom.Seen> look(Evidence evidence, State state) {
        List<Evidence.Pair> clipped = evidence.clippedBefore(state);
        return state.role() == Role.UNCHANGED ? sinceBefore(state, clipped) : withGain(evidence, state, clipped);
    }

    private static Optional<Symptom.Seen> sinceBefore(State state, List<Evidence.Pair> clipped) {
        List<Evidence.Pair> open =
                clipped.stream().filter(p -> opened(p).isPresent()).toList();
        List<Half> halves =
                open.stream().flatMap(p -> opened(p).stream()).distinct().toList();
        if (halves.size() != 1 || open.size() < SHARE * clipped.size()) {
            return Optional.empty();
        }
        Evidence.Pair top = Evidence.atHighestGain(clipped).orElseThrow();
        boolean goesOn = open.contains(top) || top.change(ItemValue.LEVEL).orElse(0) >= LOUDER_DB;
        return goesOn
                ? Optional.of(new Symptom.Seen(
                        Symptom.open(halves.get(0)),
                        state,
                        evidence(Evidence.atHighestGain(open).orElseThrow(), halves.get(0))))
                : Optional.empty();
    }

    /** The half that goes on since the work, where the figures of a setting agree on one. */
    private static Optional<Half> opened(Evidence.Pair pair) {
        Optional<Halves> before = Halves.of(pair.from());
        Optional<Halves> after = Halves.of(pair.to());
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double moved = after.get().peaks() - before.get().peaks();
        Half half = Half.larger(moved);
        boolean agree = Math.abs(moved) >= PEAKS
                && Math.abs(after.get().peaks()) >= PEAKS
                && half == Half.larger(after.get().peaks())
                && staysShorter(after.get(), half)
                && grown(before.get(), after.get(), half).orElse(true);
        return agree ? Optional.of(half) : Optional.empty();
    }

    /** Whether clip levels grew apart; empty where one of them is not known. */
    private static Optional<Boolean> grown(Halves from, Halves to, Half half) {
        return from.clips().flatMap(a -> to.clips().map(b -> b.beyond(a, half) >= CLIPS));
    }

    private static boolean staysShorter(Halves halves, Half half) {
        return halves.dwell(half) < DWELL * halves.dwell(half.other());
    }

    private static Optional<Symptom.Seen> withGain(Evidence evidence, State state, List<Evidence.Pair> clipped) {
        Optional<Evidence.Pair> top = Evidence.atHighestGain(clipped);
        Optional<Half> half = top.flatMap(p -> apart(evidence, p.to()))
                .filter(h -> apart(evidence, top.get().from()).filter(h::equals).isEmpty());
        return half.map(h -> new Symptom.Seen(Symptom.open(h), state, evidence(top.get(), h)));
    }

    /** The half that goes on at a setting, where the figures agree on one: clip levels grow apart from the middle to this gain. */
    private static Optional<Half> apart(Evidence evidence, StateAtCondition top) {
        Optional<Halves> high = Halves.of(top);
        Optional<Halves> low = evidence.middle(top).flatMap(Halves::of);
        if (high.isEmpty() || low.isEmpty() || Math.abs(high.get().peaks()) < PEAKS) {
            return Optional.empty();
        }
        Half half = Half.larger(high.get().peaks());
        return staysShorter(high.get(), half)
                        && grown(low.get(), high.get(), half).orElse(false)
                ? Optional.of(half)
                : Optional.empty();
    }

    private static Remark evidence(Evidence.Pair pair, Half half) {
        Halves before = Halves.of(pair.from()).orElseThrow();
        Halves after = Halves.of(pair.to()).orElseThrow();
        Argument word = Argument.word(half == Half.UPPER ? Word.UPPER_HALF : Word.LOWER_HALF);
        Argument peaks = ratio(after.peaks(), half);
        Argument peaksBefore = ratio(before.peaks(), half);
        return after.clips().isPresent() && before.clips().isPresent()
                ? Remark.of(
                        HintRemark.ONE_SIDE_BY_BOTH,
                        pair.place(),
                        word,
                        peaks,
                        peaksBefore,
                        ratio(after.clips().get().value(), half),
                        ratio(before.clips().get().value(), half))
                : Remark.of(HintRemark.ONE_SIDE_BY_PEAKS, pair.place(), word, peaks, peaksBefore);
    }

    /** The half over the other one. */
    private static Argument ratio(double upperOverLower, Half half) {
        return Argument.significant(Math.exp(half == Half.UPPER ? upperOverLower : -upperOverLower), Unit.ONE, 3);
    }
}
