package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Answer.Kind;
import clipwitness.compare.finding.ClippedSetting;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.FindingValue;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Significance;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What became of a sound, in two or three short sentences: how loud, how much of the wave differs, how much it distorts and so what it is. */
final class AnswerText {
    /** Decibels and shares show no more than one decimal here: nobody hears the next one. */
    private static final double FINEST = 0.1;

    /** A distortion that is next to none, beside one that was clear: {@code 0.14 %} instead of {@code 23 %}. */
    private static final int AMOUNT_DIGITS = 2;

    private final JobWording wording;
    private final ItemText texts;
    private final AnswerWords words;

    AnswerText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.words = new AnswerWords(wording);
    }

    String of(Answer answer) {
        return switch (answer.place()) {
            case FIRST -> full(answer);
            case REPEATS -> against("answer.repeats", answer);
            case ADDS -> answer.kind() == Kind.CLEAN ? full(answer) : against("answer.against", answer);
        };
    }

    /** One sentence: how loud it is, and how much of the wave differs, is told before or beside the verdict. */
    private String against(String key, Answer answer) {
        return wording.say(
                key,
                "from",
                wording.called(answer.subject().earlier()),
                "change",
                distortion(answer),
                "answer",
                words.of(answer));
    }

    private String full(Answer answer) {
        List<String> sentences = new ArrayList<>();
        freed(answer).ifPresent(sentences::add);
        sentences.add(loud(answer));
        if (answer.kind() == Kind.CLEAN) {
            sentences.add(wording.say(
                    "answer.clean.why",
                    "limit",
                    wording.percent(CommonPractice.LEAST_JUDGED_PERCENT),
                    "settings",
                    wording.apart(wording.say("answer.clean.settings"))));
        } else {
            left(answer).ifPresent(sentences::add);
            sentences.add(wording.say("answer.thd", "change", distortion(answer), "answer", words.beyondLead(answer)));
        }
        return String.join(" ", sentences);
    }

    /** Up to where it hardly clips any more, which is heard first. */
    private Optional<String> freed(Answer answer) {
        return answer.toldOfFreed().map(told -> {
            Difference thd = told.amounts().orElseThrow();
            Condition upTo = answer.freed().get(0).condition();
            return wording.say(
                    "answer.freed",
                    "to",
                    wording.called(answer.subject().later()),
                    "settings",
                    wording.condition(upTo),
                    "condition",
                    upTo.equals(told.condition()) ? "" : wording.condition(told.condition()),
                    "now",
                    amount(thd.now()),
                    "before",
                    amount(thd.before()));
        });
    }

    private String amount(Measured.Value thd) {
        return thd.isUpperBound()
                ? wording.say(
                        "amount.below",
                        "amount",
                        wording.numbers().bound(thd.shown(), thd.unit(), 0).text())
                : wording.numbers().rounded(thd.number(), thd.unit(), AMOUNT_DIGITS);
    }

    private String loud(Answer answer) {
        Item level = answer.here().level();
        return wording.say(
                (answer.freed().isEmpty() ? "answer.loud." : "answer.freed.") + direction(level),
                "to",
                wording.called(answer.subject().later()),
                "from",
                wording.called(answer.subject().earlier()),
                "condition",
                wording.apart(wording.condition(answer.subject().condition())),
                "change",
                Significance.of(level) ? size(level) : within(level));
    }

    private static String direction(Item level) {
        return !Significance.of(level) ? "same" : Items.isFall(level) ? "quieter" : "louder";
    }

    private Optional<String> left(Answer answer) {
        String direction = direction(answer.here().level());
        return answer.left()
                .map(left -> isKnown(left)
                        ? wording.say("answer.left." + direction, "share", share(left))
                        : wording.say("answer.most." + direction, "share", most(left)));
    }

    private static boolean isKnown(FindingValue left) {
        return !left.isUpperBound() && left.value() > Math.max(FINEST, uncertainty(left));
    }

    private static double uncertainty(FindingValue value) {
        return value.expandedUncertainty().orElse(0);
    }

    private String share(FindingValue left) {
        return texts.round(left.value(), Math.max(FINEST, uncertainty(left)), Unit.PERCENT);
    }

    private String most(FindingValue left) {
        return wording.numbers()
                .atMost(
                        Math.min(100, left.value() + uncertainty(left)),
                        Unit.PERCENT,
                        NumberText.decimals(uncertainty(left), 1));
    }

    /** Where it goes both ways: the farthest of each way. Else what it does here, and where it goes farther. */
    private String distortion(Answer answer) {
        if (answer.farthest().size() > 1) {
            return wording.list(answer.farthest().stream()
                    .map(s -> at(s.condition(), turn(s)))
                    .toList());
        }
        String here = turn(answer.here());
        List<String> others = answer.farthest().stream()
                .filter(s -> !answer.freed().contains(s))
                .map(s -> at(
                        s.condition(),
                        s.turn() == answer.here().turn() ? size(s.thd().orElseThrow()) : turn(s)))
                .toList();
        return others.isEmpty() ? here : beside(answer, here, wording.list(others));
    }

    /** What it does here, which is said to be here where it does nothing, and what it does elsewhere. */
    private String beside(Answer answer, String here, String others) {
        return answer.here().turns()
                ? wording.say("answer.thd.elsewhere", "change", here, "others", others)
                : wording.say(
                        "answer.thd.stays.but", "change", at(answer.subject().condition(), here), "others", others);
    }

    private String at(Condition condition, String change) {
        return wording.say("answer.thd.at", "change", change, "condition", wording.condition(condition));
    }

    private String turn(ClippedSetting setting) {
        return switch (setting.turn()) {
            case LOWER -> turned("lower", setting);
            case HIGHER -> turned("higher", setting);
            case STAYS ->
                wording.say("answer.thd.stays", "change", within(setting.thd().orElseThrow()));
            case UNKNOWN ->
                setting.thd()
                        .map(i -> wording.say("answer.thd.unknown", "change", within(i)))
                        .orElseGet(() -> wording.say("answer.thd.hidden.unknown"));
        };
    }

    private String turned(String way, ClippedSetting setting) {
        return setting.thd()
                .map(i -> wording.say("answer.thd." + way, "change", size(i)))
                .orElseGet(() -> wording.say("answer.thd.hidden." + way));
    }

    /** A size whose whole decibels are not known is told by what it is at least. */
    private String size(Item item) {
        if (texts.isAtLeast(item)) {
            return texts.least(item);
        }
        return texts.round(Items.size(item), Math.max(FINEST, Items.uncertainty(item)), Unit.DECIBEL);
    }

    private String within(Item item) {
        return wording.numbers()
                .atMost(
                        Items.size(item) + Items.uncertainty(item),
                        Unit.DECIBEL,
                        NumberText.decimals(Items.uncertainty(item), 1));
    }
}
