package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Conditions in words.
 *
 * @param speech words and numbers of the report
 */
record ConditionWords(Speech speech) {
    /** A position of the gain control; empty where there is none. */
    String gain(OptionalDouble percent) {
        return percent.isPresent() ? speech.gain(percent.getAsDouble()) : "";
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
            condition.frequency().ifPresent(f -> words.add(speech.numbers().nominal(f, Unit.HERTZ)));
        }
        if (!condition.level().equals(from.level())) {
            condition.level().ifPresent(l -> words.add(speech.numbers().nominal(l, Unit.VOLT)));
        }
        if (!condition.setting().equals(from.setting())) {
            condition.setting().ifPresent(words::add);
        }
        return String.join(", ", words);
    }
}
