package clipwitness.report.words;

import clipwitness.compare.finding.LevelOnly;

/** The same wave at another level, in words. */
final class LevelOnlyText {
    private final JobWording wording;
    private final ItemText texts;
    private final NullText nulls;

    LevelOnlyText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.nulls = new NullText(wording);
    }

    String of(LevelOnly finding) {
        return wording.say(
                finding.isLouder() ? "finding.level.only.louder" : "finding.level.only.quieter",
                "to",
                wording.called(finding.subject().later()),
                "from",
                wording.called(finding.subject().earlier()),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())),
                "change",
                texts.sizeOf(finding.level()),
                "share",
                nulls.most(finding.nullDepth()));
    }
}
