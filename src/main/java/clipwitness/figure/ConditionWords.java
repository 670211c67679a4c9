package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Conditions in words. */
final class ConditionWords {
    private ConditionWords() {}

    /** A position of the gain control. */
    static String gain(double percent) {
        return NumberForms.shortest(percent, 1) + " % gain";
    }

    /** A condition in words, without what it shares with the job's main condition: {@code 50 % gain, 500 Hz}. */
    static String of(Condition condition, Condition main) {
        List<String> words = new ArrayList<>();
        condition.gainPercent().ifPresent(g -> words.add(gain(g)));
        String rest = difference(condition, main);
        if (!rest.isEmpty()) {
            words.add(rest);
        }
        return String.join(", ", words);
    }

    /** What of a condition differs from another, gain left out: {@code 500 Hz, 200 mV, scooped}; empty where nothing does. */
    static String difference(Condition condition, Condition from) {
        List<String> words = new ArrayList<>();
        if (!condition.frequency().equals(from.frequency())) {
            condition.frequency().ifPresent(f -> words.add(quantity(f, Unit.HERTZ)));
        }
        if (!condition.level().equals(from.level())) {
            condition.level().ifPresent(l -> words.add(quantity(l, Unit.VOLT)));
        }
        if (!condition.setting().equals(from.setting())) {
            condition.setting().ifPresent(words::add);
        }
        return String.join(", ", words);
    }

    /** A number with its prefixed unit, to four digits. */
    static String quantity(double value, Unit unit) {
        AxisUnit written = AxisUnit.of(unit, Math.abs(value));
        double scaled = value / Math.pow(10, written.exponent());
        return NumberForms.shortest(scaled, NumberForms.decimalsFor(scaled, 4)) + " " + written.symbol();
    }
}
