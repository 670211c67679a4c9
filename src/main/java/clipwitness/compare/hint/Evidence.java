package clipwitness.compare.hint;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Drift;
import clipwitness.compare.judge.ItemBuilder;
import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Intent;
import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * What hints are drawn from.
 *
 * @param job           the job
 * @param catalogue     waveform captures by state and condition
 * @param repeatability how well figures come back
 * @param devices       traced devices and what they predict
 */
public record Evidence(Job job, Catalogue catalogue, Repeatability repeatability, Devices devices) {
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
        return pairs(state).stream().reduce((a, b) -> gain(b) > gain(a) ? b : a);
    }

    /** The hints of a rule that looks at the highest gain of each compared state. */
    List<Hint> atHighest(BiFunction<State, Pair, Optional<Hint>> rule) {
        return compared().stream()
                .flatMap(s -> highestPair(s).flatMap(p -> rule.apply(s, p)).stream())
                .toList();
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

    /** Where, for a sentence: {@code at 50 % gain}. */
    static String place(OptionalDouble gainPercent) {
        return gainPercent.isPresent()
                ? String.format(Locale.ROOT, "at %.0f %% gain", gainPercent.getAsDouble())
                : "at the one setting captured";
    }

    /**
     * A setting before and after.
     *
     * @param from before
     * @param to   after
     */
    record Pair(StateAtCondition from, StateAtCondition to) {
        /** Where, for a sentence. */
        String place() {
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

    /** The setting of a state at the highest gain captured. */
    Optional<StateAtCondition> highest(String state) {
        return catalogue.of(state).stream()
                .filter(s -> s.condition().gainPercent().isPresent())
                .reduce((a, b) -> Catalogue.gain(b) > Catalogue.gain(a) ? b : a);
    }
}
