package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Conditions in words.
 *
 * @param numbers numbers as the report's language writes them
 */
record ConditionWords(NumberText numbers) {
    /** A position of the gain control; empty where there is none. */
    String gain(OptionalDouble percent) {
        return percent.isPresent() ? numbers.nominal(percent.getAsDouble(), Unit.PERCENT) + " gain" : "";
    }

    /** How a sentence about a position of the gain control begins, with a capital. */
    String opening(OptionalDouble percent) {
        return percent.isPresent() ? "At " + gain(percent) : "As the controls stood";
    }

    /** The end of a title about one position of the gain control. */
    String at(OptionalDouble percent) {
        return percent.isPresent() ? " at " + gain(percent) : "";
    }

    /** A condition in words, without what it shares with the job's main condition: {@code 50 % gain, 500 Hz}. */
    String of(Condition condition, Condition main) {
        List<String> words = new ArrayList<>();
        if (condition.gainPercent().isPresent()) {
            words.add(gain(condition.gainPercent()));
        }
        String rest = difference(condition, main);
        if (!rest.isEmpty()) {
            words.add(rest);
        }
        return String.join(", ", words);
    }

    /** What of a condition differs from another, gain left out: {@code 500 Hz, 200 mV, scooped}; empty where nothing does. */
    String difference(Condition condition, Condition from) {
        List<String> words = new ArrayList<>();
        if (!condition.frequency().equals(from.frequency())) {
            condition.frequency().ifPresent(f -> words.add(numbers.nominal(f, Unit.HERTZ)));
        }
        if (!condition.level().equals(from.level())) {
            condition.level().ifPresent(l -> words.add(numbers.nominal(l, Unit.VOLT)));
        }
        if (!condition.setting().equals(from.setting())) {
            condition.setting().ifPresent(words::add);
        }
        return String.join(", ", words);
    }
}
