package clipwitness.reason;

/** Why there is no figure, or why one is doubted. There is one enum for each subject. */
public sealed interface ReasonCode extends Phrase
        permits FigureReason, DeviceReason, ComparisonReason, DoubtReason, FrameReason, ResponseReason {
    @Override
    default String key() {
        return "reason." + code();
    }
}
