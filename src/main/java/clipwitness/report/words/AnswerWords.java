package clipwitness.report.words;

import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Answer.Degree;
import clipwitness.compare.finding.Answer.Kind;
import clipwitness.compare.finding.Answer.Loudness;
import clipwitness.compare.finding.Answer.Timbre;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What became of a sound, in a few words: {@code mostly quieter, a little gentler}. */
final class AnswerWords {
    private final JobWording wording;

    AnswerWords(JobWording wording) {
        this.wording = wording;
    }

    /** In two to five words, as a lead; what the harmonics above the seventh add has words of its own. */
    String lead(Answer answer) {
        String name = "answer.lead." + answer.kind().code();
        String words = switch (answer.kind()) {
            case GENTLER, HARSHER -> plain(answer);
            case ONLY_LEVEL -> wording.say(name + "." + answer.loudness().code());
            case SAME, DIFFERENT, OTHER_SHAPE, OPEN, CLEAN -> wording.say(name);
        };
        return wording.say("lead.character", "answer", words);
    }

    /** Level and distortion: {@code about as loud, gentler}. */
    private String plain(Answer answer) {
        String kind = answer.freed().isEmpty()
                ? wording.say("answer." + answer.kind().code() + (answer.degree() == Degree.PLAIN ? "" : ".little"))
                : wording.say("answer.later");
        if (answer.degree() == Degree.MOSTLY_LEVEL && level(answer).isPresent()) {
            return wording.say("answer.mostly", "level", level(answer).orElseThrow(), "answer", kind);
        }
        String level = level(answer)
                .orElseGet(() ->
                        wording.say(answer.loudness() == Loudness.BOTH ? "answer.level.both" : "answer.level.same"));
        return wording.say("answer.both", "level", level, "answer", kind);
    }

    /** The words where the lead does not say all of them; else empty. */
    String beyondLead(Answer answer) {
        boolean more = answer.timbre().isPresent()
                || !answer.freed().isEmpty()
                || answer.kind() == Kind.OPEN
                || answer.kind() == Kind.OTHER_SHAPE
                || (answer.kind() == Kind.ONLY_LEVEL && answer.loudness() == Loudness.BOTH);
        return more ? of(answer) : "";
    }

    /** All of it. */
    String of(Answer answer) {
        return switch (answer.kind()) {
            case ONLY_LEVEL -> wording.say("answer.only." + answer.loudness().code());
            case GENTLER, HARSHER -> sound(answer);
            case DIFFERENT, OTHER_SHAPE -> but(name(answer), answer.timbre());
            case SAME, OPEN, CLEAN -> name(answer);
        };
    }

    private String name(Answer answer) {
        return wording.say("answer." + answer.kind().code());
    }

    private String sound(Answer answer) {
        boolean contrary = answer.timbre()
                .filter(t -> (t == Timbre.ROUNDER) != (answer.kind() == Kind.GENTLER))
                .isPresent();
        List<String> parts = new ArrayList<>();
        Optional<String> level = level(answer);
        boolean mostly = answer.degree() == Degree.MOSTLY_LEVEL && level.isPresent();
        if (!mostly) {
            level.ifPresent(parts::add);
        }
        parts.add(wording.say("answer." + answer.kind().code() + (answer.degree() == Degree.PLAIN ? "" : ".little")));
        if (!contrary) {
            answer.timbre().ifPresent(t -> parts.add(timbre(t)));
        }
        String sound = wording.list(parts);
        if (mostly) {
            sound = wording.say("answer.mostly", "level", level.orElseThrow(), "answer", sound);
        }
        return contrary ? but(sound, answer.timbre()) : sound;
    }

    /** A change of level that is heard and goes one way everywhere. */
    private Optional<String> level(Answer answer) {
        boolean oneWay = answer.loudness() == Loudness.QUIETER || answer.loudness() == Loudness.LOUDER;
        return oneWay && answer.here().isOtherLevel()
                ? Optional.of(wording.say("answer." + answer.loudness().code()))
                : Optional.empty();
    }

    private String but(String sound, Optional<Timbre> timbre) {
        return timbre.map(t -> wording.say("answer.but", "answer", sound, "timbre", timbre(t)))
                .orElse(sound);
    }

    private String timbre(Timbre timbre) {
        return wording.say("answer." + timbre.code());
    }
}
