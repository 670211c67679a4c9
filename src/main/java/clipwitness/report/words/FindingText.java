package clipwitness.report.words;

import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Asymmetric;
import clipwitness.compare.finding.Deciding;
import clipwitness.compare.finding.Differs;
import clipwitness.compare.finding.EqualGain;
import clipwitness.compare.finding.EvenHarmonics;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Headroom;
import clipwitness.compare.finding.LevelOnly;
import clipwitness.compare.finding.Matched;
import clipwitness.compare.finding.Moved;
import clipwitness.compare.finding.Onset;
import clipwitness.compare.finding.OtherDrive;
import clipwitness.compare.finding.OtherHalves;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.RefusedCapture;
import clipwitness.compare.finding.SameShape;
import clipwitness.compare.finding.Telling;
import clipwitness.compare.finding.Treble;
import clipwitness.compare.rule.Findings;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Findings as sentences. */
public final class FindingText {
    /** So many paragraphs fit on a first page. */
    private static final int MOST = 5;

    /** So many paragraphs are told beside the answers, where there are so many. */
    private static final int LEAST = 2;

    private static final String LEAD = "lead.";

    /** Findings that begin with a lead where they begin a paragraph. */
    private static final Set<Class<? extends Finding>> LED = Set.of(
            RefusedCapture.class,
            LevelOnly.class,
            Onset.class,
            Matched.class,
            Asymmetric.class,
            SameShape.class,
            Moved.class,
            Headroom.class,
            Treble.class);

    private static final int VOLT_DIGITS = 2;

    private final JobWording wording;
    private final AnswerWords answers;
    private final Map<Class<? extends Finding>, Function<Finding, String>> sentences = new LinkedHashMap<>();

    /** Sentences in a wording. */
    public FindingText(JobWording wording) {
        this.wording = wording;
        OnsetText onset = new OnsetText(wording);
        AsymmetricText asymmetric = new AsymmetricText(wording);
        UnchangedText unchanged = new UnchangedText(wording);
        DiffersText differs = new DiffersText(wording);
        put(RefusedCapture.class, this::refused);
        put(Answer.class, new AnswerText(wording)::of);
        put(LevelOnly.class, new LevelOnlyText(wording)::of);
        put(Onset.class, onset::of);
        put(EqualGain.class, onset::of);
        put(Matched.class, new MatchedText(wording)::of);
        put(OtherDrive.class, new DriveText(wording)::of);
        put(Asymmetric.class, asymmetric::of);
        put(EvenHarmonics.class, asymmetric::of);
        put(SameShape.class, unchanged::of);
        put(Moved.class, unchanged::of);
        put(Headroom.class, this::headroom);
        put(Treble.class, new TrebleText(wording)::of);
        put(Deciding.class, new DecidingText(wording)::of);
        put(Differs.class, differs::sentence);
        this.answers = new AnswerWords(wording);
    }

    private <F extends Finding> void put(Class<F> kind, Function<F, String> sentence) {
        sentences.put(kind, finding -> sentence.apply(kind.cast(finding)));
    }

    /** The kinds of findings that have a sentence. */
    Set<Class<? extends Finding>> kinds() {
        return Collections.unmodifiableSet(sentences.keySet());
    }

    /** A finding in sentences, its lead first; empty where a picture says it. */
    public Optional<String> of(Finding finding) {
        return body(finding)
                .map(body -> lead(finding)
                        .map(lead -> wording.say("finding.led", "lead", lead, "text", body))
                        .orElse(body));
    }

    /** The sentences of a finding without its lead; empty where a picture says it. */
    Optional<String> body(Finding finding) {
        return Optional.ofNullable(sentences.get(finding.getClass())).map(sentence -> sentence.apply(finding));
    }

    /** What a finding says in two to five words; empty for one that is told behind another. */
    Optional<String> lead(Finding finding) {
        if (finding instanceof Answer answer) {
            return answer.place() == Answer.Place.FIRST ? Optional.of(answers.lead(answer)) : Optional.empty();
        }
        if (!LED.contains(finding.getClass())) {
            return Optional.empty();
        }
        return Optional.of(wording.say(LEAD + finding.code() + "." + variant(finding)));
    }

    /** What distinguishes the leads of one kind of finding. */
    private static String variant(Finding finding) {
        if (finding instanceof Moved moved) {
            String way = moved.way().map(Telling.Kind::code).orElse("within");
            return moved.farthest().quantity().key() + "." + (moved.otherKind() ? "other-kind" : way);
        }
        if (finding instanceof Matched matched && matched.elsewhere().isPresent()) {
            return matched.word() + ".but";
        }
        if (finding instanceof RefusedCapture refused) {
            return refused.others() > 0 ? "captures" : "capture";
        }
        return finding instanceof Onset onset
                ? onset.halves().map(FindingText::variant).orElse(onset.word())
                : finding.word();
    }

    private static String variant(OtherHalves halves) {
        if (!halves.bothOneWay()) {
            return "halves";
        }
        return halves.halves().get(0).onset().isRise() ? "halves.later" : "halves.earlier";
    }

    /**
     * The paragraphs of the first page that are told beside no verdict: at most so many that they and the answers are five. What became of a sound, and what
     * failed or stays open, stands beside the verdicts.
     */
    public List<LedText> firstPage(Findings findings) {
        List<Paragraph> others = findings.paragraphs().stream()
                .filter(p -> !(p.findings().get(0) instanceof Answer))
                .toList();
        int answered = findings.paragraphs().size() - others.size();
        return others.stream()
                .limit(Math.max(LEAST, MOST - answered))
                .map(this::led)
                .toList();
    }

    /** A paragraph, its lead apart. */
    LedText led(Paragraph paragraph) {
        Finding first = paragraph.findings().get(0);
        String otherwise = first instanceof EqualGain ? wording.say(LEAD + first.code()) : "";
        return new LedText(lead(first).orElse(otherwise), body(paragraph));
    }

    /** The sentences of a paragraph without its lead. */
    String body(Paragraph paragraph) {
        List<Finding> all = paragraph.findings();
        List<String> sentences = new ArrayList<>(body(all.get(0)).stream().toList());
        all.stream().skip(1).flatMap(f -> of(f).stream()).forEach(sentences::add);
        return String.join(" ", sentences);
    }

    private String headroom(Headroom finding) {
        return wording.say(
                "finding.headroom",
                "to",
                wording.called(finding.subject().later()),
                "swing",
                wording.numbers().rounded(finding.swing().number(), Unit.VOLT, VOLT_DIGITS),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())),
                "span",
                wording.numbers().rounded(finding.span(), Unit.VOLT, VOLT_DIGITS));
    }

    private String refused(RefusedCapture refused) {
        String reason = wording.speech().sentence(refused.doubt());
        return refused.others() > 0
                ? wording.say(
                        "finding.refused.several",
                        "file",
                        refused.file(),
                        "count",
                        wording.count(refused.others()),
                        "reason",
                        reason)
                : wording.say("finding.refused", "file", refused.file(), "reason", reason);
    }
}
