package clipwitness.compare.result;

import clipwitness.job.JobSheet;
import clipwitness.reason.Argument;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Why two states have no pair of captures to be compared. */
public record NoPair(JobSheet sheet, String from, String to) {
    /**
     * The state that has no capture of a kind.
     *
     * @param has whether a state has one
     */
    public Optional<Reason> noCapture(Word kind, Predicate<String> has) {
        return Stream.of(from, to)
                .filter(has.negate())
                .findFirst()
                .map(state -> Reason.of(ComparisonReason.NO_CAPTURE_OF_KIND, Argument.word(kind), label(state)));
    }

    /**
     * Both have captures, but none at the same condition.
     *
     * @param shared    whether one export stands for both states
     * @param notCommon what is said where it does not
     */
    public Reason notCommon(boolean shared, ComparisonReason notCommon) {
        return Reason.of(shared ? ComparisonReason.ONE_EXPORT_FOR_BOTH : notCommon, label(from), label(to));
    }

    private Argument label(String state) {
        return Argument.name(sheet.called(state));
    }
}
