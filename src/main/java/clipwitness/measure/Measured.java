package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.ReasonCode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** A measured value with its uncertainty, or a refusal with its reason. Never NaN. */
public sealed interface Measured {
    /** Coverage factor of every expanded uncertainty: about 95 % of a normal distribution (JCGM 100, 6.3; measurement book, section 5). */
    double COVERAGE_FACTOR = 2;

    /** The unit that the value has or would have. */
    Unit unit();

    /** The value, where there is one. */
    OptionalDouble value();

    /** Expanded uncertainty, the coverage factor of {@link Budget} times the standard one, in the unit; empty where there is no value. */
    OptionalDouble expandedUncertainty();

    /** Why there is no value. */
    Optional<Reason> reason();

    /** The value with its uncertainty, where there is one. */
    default Optional<Value> asValue() {
        return this instanceof Value v ? Optional.of(v) : Optional.empty();
    }

    /** A value without contributions yet, exact until one is added. */
    static Value of(double value, Unit unit, Contribution... budget) {
        return new Value(value, unit, List.of(budget), false);
    }

    /** A value whose only contribution so far is noise. */
    static Value withNoise(double value, Unit unit, double standardUncertainty) {
        return of(value, unit, new Contribution(Source.NOISE, standardUncertainty));
    }

    /** A refusal. */
    static Refused refused(Unit unit, Reason reason) {
        return new Refused(unit, reason);
    }

    /** A refusal whose code says all. */
    static Refused refused(Unit unit, ReasonCode code) {
        return new Refused(unit, Reason.of(code));
    }

    /** A value of which only limits are known; without a lower one it lies below the upper one. */
    static Between between(Unit unit, OptionalDouble lower, double upper) {
        return new Between(unit, lower, upper);
    }

    /**
     * A value.
     *
     * @param number       finite, in the unit
     * @param unit         unit
     * @param budget       contributions to the uncertainty, combined as independent (JCGM 100, 5.1.2)
     * @param isUpperBound the value does not exceed its uncertainty: what it stands for lies below value + U
     */
    record Value(double number, Unit unit, List<Contribution> budget, boolean isUpperBound) implements Measured {
        /** Checks that the number is finite. */
        public Value {
            Objects.requireNonNull(unit, "unit");
            budget = List.copyOf(budget);
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("a value must be finite but is " + number);
            }
        }

        @Override
        public OptionalDouble value() {
            return OptionalDouble.of(number);
        }

        /** Combined standard uncertainty, root sum square of the contributions. */
        public double standardUncertainty() {
            return Budget.standardUncertainty(budget);
        }

        /** Expanded uncertainty, Student's factor for 95.45 % times the standard one; k = 2 where all contributions are as good as known. */
        public double expanded() {
            return Budget.coverageFactor(budget) * standardUncertainty();
        }

        @Override
        public OptionalDouble expandedUncertainty() {
            return OptionalDouble.of(expanded());
        }

        @Override
        public Optional<Reason> reason() {
            return Optional.empty();
        }

        /** The same value with one contribution more. */
        public Value plus(Source source, double standardUncertainty) {
            return plus(List.of(new Contribution(source, standardUncertainty)));
        }

        /** The same value with more contributions. */
        public Value plus(List<Contribution> contributions) {
            List<Contribution> more = new ArrayList<>(budget);
            more.addAll(contributions);
            return new Value(number, unit, more, isUpperBound);
        }

        /** The same value without the contributions of a source, for a comparison in which that source cancels. */
        public Value without(Source source) {
            return new Value(
                    number,
                    unit,
                    budget.stream().filter(c -> c.source() != source).toList(),
                    isUpperBound);
        }

        /** The same value, marked as an upper bound. */
        public Value asUpperBound() {
            return new Value(number, unit, budget, true);
        }

        /** The same value, marked as an upper bound where it does not exceed its expanded uncertainty. */
        public Value orUpperBound() {
            return number > expanded() ? this : asUpperBound();
        }

        /** Whether it is an upper bound in dB, of which the number alone says nothing: nothing at all would be an endless fall. */
        public boolean isBoundedLevel() {
            return isUpperBound && (unit == Unit.DECIBEL || unit == Unit.DBC);
        }

        /**
         * The same value, marked as an upper bound where it is a level in dBc whose standard uncertainty reaches that of an amplitude known to a
         * third, 20 lg e / 3 = 2.9 dB (measurement book, section 2: harmonics).
         */
        public Value orBoundOfLevel() {
            return unit == Unit.DBC && standardUncertainty() >= Decibels.PER_RELATIVE_AMPLITUDE / 3
                    ? asUpperBound()
                    : this;
        }

        /** What is printed: the value, or where it is an upper bound what it lies below, value + U. */
        public double shown() {
            return isUpperBound ? number + expanded() : number;
        }

        /** Standard uncertainty over the value's magnitude; the value must not be 0. */
        public double relativeUncertainty() {
            return standardUncertainty() / Math.abs(number);
        }

        /** The contributions, largest first. */
        public List<Contribution> largestFirst() {
            return budget.stream()
                    .sorted(Comparator.comparingDouble(Contribution::standardUncertainty)
                            .reversed())
                    .toList();
        }
    }

    /**
     * A refusal.
     *
     * @param unit unit that the value would have
     * @param why  why there is no value
     */
    record Refused(Unit unit, Reason why) implements Measured {
        /** Checks that a reason is given. */
        public Refused {
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(why, "why");
        }

        @Override
        public OptionalDouble value() {
            return OptionalDouble.empty();
        }

        @Override
        public OptionalDouble expandedUncertainty() {
            return OptionalDouble.empty();
        }

        @Override
        public Optional<Reason> reason() {
            return Optional.of(why);
        }
    }

    /**
     * No value, but limits that it lies between.
     *
     * @param unit  unit of both
     * @param lower lower limit; empty where there is none
     * @param upper upper limit
     */
    record Between(Unit unit, OptionalDouble lower, double upper) implements Measured {
        /** Checks that the limits rise. */
        public Between {
            Objects.requireNonNull(unit, "unit");
            if (!(lower.orElse(Double.NEGATIVE_INFINITY) < upper && upper < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("limits must rise but are " + lower + " and " + upper);
            }
        }

        @Override
        public OptionalDouble value() {
            return OptionalDouble.empty();
        }

        @Override
        public OptionalDouble expandedUncertainty() {
            return OptionalDouble.empty();
        }

        @Override
        public Optional<Reason> reason() {
            Argument to = written(upper);
            return Optional.of(
                    lower.isPresent()
                            ? Reason.of(FigureReason.BETWEEN_SETTINGS, written(lower.getAsDouble()), to)
                            : Reason.of(FigureReason.BELOW_SETTING, to));
        }

        private Argument written(double number) {
            return Argument.decimals(number, unit, number == Math.rint(number) ? 0 : 1);
        }
    }
}
