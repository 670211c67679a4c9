package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What figures can look like. */
enum Symptom {
    /** The upper half goes on where the lower clips. */
    UPPER_OPEN(HintCode.ONE_SIDE_NOT_CLIPPING, HintRemark.ONE_SIDE_NOT_CLIPPING, Word.UPPER_HALF),
    /** The lower half goes on where the upper clips. */
    LOWER_OPEN(HintCode.ONE_SIDE_NOT_CLIPPING, HintRemark.ONE_SIDE_NOT_CLIPPING, Word.LOWER_HALF),
    /** Nothing clips where something did. */
    NOT_CLIPPING(HintCode.NOT_CLIPPING, HintRemark.NOT_CLIPPING),
    /** Nothing clips at some settings where something did, and at others it does. */
    HARDLY_CLIPPING(HintCode.NOT_CLIPPING, HintRemark.HARDLY_CLIPPING),
    /** High notes are missing at all settings alike. */
    DULLER(HintCode.BESIDE_THE_CLIPPER, HintRemark.DULLER),
    /** Low notes are missing at all settings alike. */
    THINNER(HintCode.BESIDE_THE_CLIPPER, HintRemark.THINNER),
    /** The level has moved at all settings alike. */
    OTHER_LEVEL(HintCode.BESIDE_THE_CLIPPER, HintRemark.OTHER_LEVEL);

    private final HintCode code;
    private final HintRemark text;
    /** Half that the text names. */
    private final Optional<Word> half;

    Symptom(HintCode code, HintRemark text) {
        this.code = code;
        this.text = text;
        this.half = Optional.empty();
    }

    Symptom(HintCode code, HintRemark text, Word half) {
        this.code = code;
        this.text = text;
        this.half = Optional.of(half);
    }

    /** A half that does not clip. */
    static Symptom open(Half half) {
        return half == Half.UPPER ? UPPER_OPEN : LOWER_OPEN;
    }

    /**
     * One state that looks so.
     *
     * @param look     what it looks like
     * @param state    which state
     * @param evidence the figures
     */
    record Seen(Symptom look, State state, Remark evidence) {}

    /** One hint for each look, however many states share it. */
    static List<Hint> hints(List<Seen> seen) {
        Map<Symptom, List<Seen>> alike = new LinkedHashMap<>();
        seen.forEach(s -> alike.computeIfAbsent(s.look, l -> new ArrayList<>()).add(s));
        return alike.entrySet().stream().map(e -> e.getKey().hint(e.getValue())).toList();
    }

    private Hint hint(List<Seen> seen) {
        Remark says = says(seen.get(0).state);
        Remark evidence = seen.get(0).evidence;
        for (Seen also : seen.subList(1, seen.size())) {
            Argument label = Argument.name(also.state.called());
            says = Remark.of(HintRemark.ALSO_IN, Argument.inner(says), label);
            evidence = Remark.of(HintRemark.ALSO_BY, Argument.inner(evidence), label, Argument.inner(also.evidence));
        }
        return new Hint(code, seen.stream().map(s -> s.state.name()).toList(), says, evidence);
    }

    private Remark says(State state) {
        List<Argument> arguments = new ArrayList<>(List.of(Argument.name(state.called())));
        half.ifPresent(h -> arguments.add(Argument.word(h)));
        return new Remark(text, arguments);
    }
}
