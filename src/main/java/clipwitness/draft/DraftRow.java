package clipwitness.draft;

import clipwitness.draft.name.Guess;
import clipwitness.draft.name.NameFacts;
import clipwitness.draft.name.StateName;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A row of the drafted captures table.
 *
 * @param source    the export
 * @param facts     what its name tells
 * @param kind      what the capture is for
 * @param frequency of the stimulus where it is not the job's, or of a response, Hz
 * @param level     of the stimulus where it is not the job's, as the table writes it
 * @param channels  input and output, where the order of the channels does not tell them
 * @param inputFile export of the input channel, where that is another file
 */
public record DraftRow(
        DraftedExport source,
        NameFacts facts,
        Guess<DraftKind> kind,
        Optional<Guess<Double>> frequency,
        Optional<Guess<String>> level,
        Optional<Guess<ChannelUse>> channels,
        Optional<Guess<DraftedExport>> inputFile) {
    /**
     * Which channels are meant.
     *
     * @param input  the input's name or number
     * @param output the output's name or number
     */
    public record ChannelUse(String input, String output) {}

    /** The state; empty where the name does not tell it. */
    Optional<StateName> state() {
        return facts.state().map(Guess::value);
    }

    /** Frequency of the tone in Hz; empty where there is none. */
    OptionalDouble tone() {
        return source.content().channels().stream()
                .flatMapToDouble(c -> c.frequency().stream())
                .findFirst();
    }

    /** Whether its name and content leave the state open, though the table needs one. */
    boolean lacksState() {
        return kind.value() != DraftKind.JUNCTION && state().isEmpty();
    }

    DraftRow with(Guess<DraftKind> other) {
        return new DraftRow(source, facts, other, frequency, level, channels, inputFile);
    }

    DraftRow under(Optional<Guess<Double>> stimulus, Optional<Guess<String>> strength) {
        return new DraftRow(source, facts, kind, stimulus, strength, channels, inputFile);
    }

    DraftRow using(Guess<ChannelUse> use) {
        return new DraftRow(source, facts, kind, frequency, level, Optional.of(use), inputFile);
    }

    /** What the name leaves open. */
    List<String> questions() {
        return facts.questions();
    }
}
