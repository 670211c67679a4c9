package clipwitness.report.words;

import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Asymmetric;
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
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.RefusedCapture;
import clipwitness.compare.finding.SameShape;
import clipwitness.compare.finding.Treble;
import clipwitness.compare.rule.Findings;
import clipwitness.quantity.Unit;
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

    private static final int VOLT_DIGITS = 2;

    private final JobWording wording;
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
        put(Differs.class, differs::sentence);
    }

    private <F extends Finding> void put(Class<F> kind, Function<F, String> sentence) {
        sentences.put(kind, finding -> sentence.apply(kind.cast(finding)));
    }

    /** The kinds of findings that have a sentence. */
    Set<Class<? extends Finding>> kinds() {
        return Collections.unmodifiableSet(sentences.keySet());
    }

    /** A finding in a sentence; empty where a picture says it. */
    public Optional<String> of(Finding finding) {
        return Optional.ofNullable(sentences.get(finding.getClass())).map(sentence -> sentence.apply(finding));
    }

    /** The paragraphs of the first page: at most five. What failed or stays open stands beside the verdicts. */
    public List<String> firstPage(Findings findings) {
        return findings.paragraphs().stream().limit(MOST).map(this::of).toList();
    }

    private String of(Paragraph paragraph) {
        return String.join(
                " ", paragraph.findings().stream().flatMap(f -> of(f).stream()).toList());
    }

    private String headroom(Headroom finding) {
        return wording.say(
                "finding.headroom",
                "to",
                wording.label(finding.subject().later()),
                "swing",
                wording.numbers().rounded(finding.swing().number(), Unit.VOLT, VOLT_DIGITS),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())),
                "span",
                wording.numbers().rounded(finding.span(), Unit.VOLT, VOLT_DIGITS));
    }

    private String refused(RefusedCapture refused) {
        return wording.say(
                "finding.refused",
                "file",
                refused.file(),
                "reason",
                wording.speech().sentence(refused.doubt()));
    }
}
