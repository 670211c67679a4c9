package clipwitness.report.words;

import clipwitness.compare.finding.Differs;
import clipwitness.compare.finding.Telling;
import clipwitness.compare.result.Item;
import java.util.List;

/** What differs between two states, in words. */
final class DiffersText {
    private final JobWording wording;
    private final ItemText texts;

    DiffersText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    /** The words for a verdict, {@code at full gain it is 5.9 dB quieter and its distortion is 3.1 dB higher}. */
    String what(List<Differs> differs) {
        return differs.isEmpty()
                ? wording.say("what.nothing")
                : String.join("; ", differs.stream().map(this::part).toList());
    }

    /** The same of one condition, in a sentence. */
    String sentence(Differs differs) {
        return wording.say(
                "finding.differs",
                "from",
                wording.called(differs.subject().earlier()),
                "to",
                wording.called(differs.subject().later()),
                "what",
                part(differs));
    }

    private String part(Differs differs) {
        List<String> what = differs.tellings().stream().map(this::telling).toList();
        return wording.say(
                "what.at", "condition", wording.named(differs.subject().condition()), "what", wording.list(what));
    }

    private String telling(Telling telling) {
        return switch (telling.item().quantity()) {
            case LEVEL -> change("what.level.", telling);
            case THD -> change("what.thd.", telling);
            case NULL_DEPTH -> shape(telling.item());
            default -> further(telling.item());
        };
    }

    private String change(String key, Telling telling) {
        return wording.say(
                key + telling.kind().code(),
                "change",
                texts.sizeOf(telling.item()),
                "uncertainty",
                texts.within(telling.item()));
    }

    private String further(Item item) {
        return wording.say(
                "what.further",
                "quantity",
                wording.quantity(item.quantity()),
                "change",
                texts.change(item).full());
    }

    private String shape(Item item) {
        return wording.say("what.shape", "share", new NullText(wording).share(item));
    }
}
