package clipwitness.reason;

/** What is advised or pointed out, and words inside other sentences. */
public sealed interface RemarkCode extends Phrase
        permits RemedyRemark, HintRemark, BenchRemark, SourceRemark, LayoutRemark, Word {}
