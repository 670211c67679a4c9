package clipwitness.draft.name;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the name of an export tells, its folders' names included.
 *
 * @param kind      word for a kind of capture
 * @param state     state
 * @param gain      position of the gain control, percent of its rotation
 * @param run       number of the occasion
 * @param frequency of the stimulus, Hz
 * @param level     of the stimulus, as the table writes it: {@code 100 mV pp}
 * @param setting   position of another control
 * @param date      day in the name
 * @param channel   which channel of a record the file holds, where it holds one
 * @param device    name of the device, for a traced curve
 * @param questions what the name leaves open
 */
public record NameFacts(
        Optional<Guess<KindWord>> kind,
        Optional<Guess<StateName>> state,
        Optional<Guess<Double>> gain,
        Optional<Guess<Integer>> run,
        Optional<Guess<Double>> frequency,
        Optional<Guess<String>> level,
        Optional<Guess<String>> setting,
        Optional<LocalDate> date,
        Optional<ChannelMark> channel,
        Optional<Guess<String>> device,
        List<String> questions) {
    /** Copies what it is given. */
    public NameFacts {
        questions = List.copyOf(questions);
    }
}
