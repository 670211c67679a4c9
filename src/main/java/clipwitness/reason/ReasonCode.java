package clipwitness.reason;

/** Why there is no figure, or why one is doubted. The constants stand in one enum a subject. */
public sealed interface ReasonCode extends Phrase
        permits FigureReason, DeviceReason, ComparisonReason, DoubtReason, FrameReason {
    @Override
    default String key() {
        return "reason." + code();
    }
}
