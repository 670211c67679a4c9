package clipwitness.compare.hint;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Change;
import clipwitness.compare.judge.ChangesAtEqualLevel;
import clipwitness.compare.judge.Drift;
import clipwitness.compare.judge.ItemBuilder;
import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.noise.NoiseCatalogue;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Intent;
import clipwitness.job.ClipperPair;
import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.reason.Argument;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * What hints are drawn from.
 *
 * @param job           the job
 * @param catalogue     waveform captures by state and condition
 * @param repeatability how well figures repeat
 * @param devices       traced devices and what they predict
 * @param noise         captures of noise by state and condition
 */
public record Evidence(
        Job job, Catalogue catalogue, Repeatability repeatability, Devices devices, NoiseCatalogue noise) {
    /** Of a change this uncertain nothing is known. */
    private static final double LOST_DB = 6;

    /** States of a role, in the sheet's order. */
    List<State> states(Role role) {
        return job.sheet().states(role);
    }

    /** Makes items as the comparisons do, with another intent. */
    ItemBuilder items(Intent intent) {
        return new ItemBuilder(job.sheet().limits(), repeatability, Drift.of(job.sheet()), intent);
    }

    /** The setting of a state's {@code before} under the same condition. */
    Optional<StateAtCondition> before(State state, StateAtCondition setting) {
        return state.against().flatMap(b -> catalogue.at(b, setting.condition()));
    }

    /** The settings of a state that its {@code before} has too, each with that one, in the table's order. */
    List<Pair> pairs(State state) {
        return catalogue.of(state.name()).stream()
                .flatMap(s -> before(state, s).map(b -> new Pair(b, s)).stream())
                .toList();
    }

    /** The pair at the highest gain captured in both; where there is no gain control, the first. */
    Optional<Pair> highestPair(State state) {
        return atHighestGain(pairs(state));
    }

    /** The hints of a rule that looks at the highest gain of each compared state. */
    List<Hint> atHighest(BiFunction<State, Pair, Optional<Hint>> rule) {
        return compared().stream()
                .flatMap(s -> highestPair(s).flatMap(p -> rule.apply(s, p)).stream())
                .toList();
    }

    /** Of some pairs the one at the highest gain; where there is no gain control, the first. */
    static Optional<Pair> atHighestGain(List<Pair> pairs) {
        return pairs.stream().reduce((a, b) -> gain(b) > gain(a) ? b : a);
    }

    /** The pairs of a state whose clippers worked before. */
    List<Pair> clippedBefore(State state) {
        return pairs(state).stream()
                .filter(p -> p.from().isClipped() && !p.to().first().refused())
                .toList();
    }

    /** The setting in the middle of the gain control, of those that differ from this one in the gain only and lie below it. */
    Optional<StateAtCondition> middle(StateAtCondition top) {
        List<StateAtCondition> along = catalogue.alongGain(top);
        if (along.size() < 2) {
            return Optional.empty();
        }
        double centre = (Catalogue.gain(along.get(0)) + Catalogue.gain(along.get(along.size() - 1))) / 2;
        return along.stream()
                .filter(s -> Catalogue.gain(s) < Catalogue.gain(top))
                .reduce((a, b) -> distance(b, centre) < distance(a, centre) ? b : a);
    }

    private static double distance(StateAtCondition setting, double centre) {
        return Math.abs(Catalogue.gain(setting) - centre);
    }

    /** Whether the sheet says that a leg of a state is open. */
    boolean hasOpenLeg(State state) {
        return listed(state)
                .filter(p -> p.up().devices().isEmpty() || p.down().devices().isEmpty())
                .isPresent();
    }

    /** Whether the sheet says that both legs of a state are open. */
    boolean hasNoLeg(State state) {
        return listed(state)
                .filter(p -> p.up().devices().isEmpty() && p.down().devices().isEmpty())
                .isPresent();
    }

    /** How far a harmonic moved from before, the fundamental being the first. */
    Optional<Shift> shiftOf(Pair pair, int order) {
        Change change = new Change(repeatability, Drift.of(job.sheet()));
        Optional<Measured.Value> level =
                change.of(pair.from(), pair.to(), ItemValue.LEVEL).asValue();
        return level.flatMap(l -> matched(pair, order)
                .map(m -> new Shift(
                        l.number() + m.number(), 2 * Math.hypot(l.standardUncertainty(), m.standardUncertainty()))));
    }

    /** How far a harmonic moved over the fundamental; empty where it is lost in noise in one of the two. */
    Optional<Shift> shiftOverFundamental(Pair pair, int order) {
        return matched(pair, order)
                .flatMap(m -> matched(pair, 1)
                        .map(f -> new Shift(
                                m.number() - f.number(),
                                2 * Math.hypot(m.standardUncertainty(), f.standardUncertainty()))))
                .filter(s -> s.expanded() < LOST_DB);
    }

    private Optional<Measured.Value> matched(Pair pair, int order) {
        return new ChangesAtEqualLevel(repeatability)
                .of(pair.from(), pair.to()).stream()
                        .filter(h -> h.order() == order)
                        .flatMap(h -> h.change().asValue().stream())
                        .findFirst();
    }

    private Optional<ClipperPair> listed(State state) {
        return job.sheet().clipper().map(c -> c.pairs().get(state.name()));
    }

    private static double gain(Pair pair) {
        return pair.from().condition().gainPercent().orElse(-1);
    }

    /** States that are compared with one before: unchanged and changed ones, in the sheet's order. */
    List<State> compared() {
        return job.sheet().states().stream()
                .filter(s -> s.against().isPresent())
                .toList();
    }

    /** Where: at a position of the gain control, or at the one setting that there is. */
    static Argument place(OptionalDouble gainPercent) {
        return gainPercent.isPresent()
                ? Argument.word(HintRemark.AT_GAIN, Argument.inner(Word.gain(gainPercent.getAsDouble())))
                : Argument.word(HintRemark.AT_THE_ONE_SETTING);
    }

    /**
     * A setting before and after.
     *
     * @param from before
     * @param to   after
     */
    record Pair(StateAtCondition from, StateAtCondition to) {
        /** Where. */
        Argument place() {
            return Evidence.place(from.condition().gainPercent());
        }

        /** Change of a figure in the unit of an item, where both have it. */
        OptionalDouble change(ItemValue figure) {
            OptionalDouble a = from.figure(figure).value();
            OptionalDouble b = to.figure(figure).value();
            return a.isPresent() && b.isPresent()
                    ? OptionalDouble.of(figure.difference(b.getAsDouble(), a.getAsDouble()))
                    : OptionalDouble.empty();
        }
    }
}
