package clipwitness.report.model;

import java.util.List;

/**
 * A capture with all that was read and measured.
 *
 * @param number    row of the captures table
 * @param file      file
 * @param inputFile file that holds the input, empty where it is the same
 * @param state     label of the state, or device
 * @param condition condition
 * @param run       number of the run
 * @param samples   number of samples
 * @param rate      sample rate, empty for a curve
 * @param channels  channels as read
 * @param sha256    digest of the file
 * @param inputSha256 digest of the input's file, empty where it is the same
 * @param evidence  how the layout was read
 * @param note      note of the captures table
 * @param together  how other captures of the same setting are taken together with it; empty where there are none
 * @param values    figures
 * @param harmonics harmonics
 * @param notes     why figures are missing, each reason once
 * @param doubts    doubts
 */
public record ListedCapture(
        String number,
        String file,
        String inputFile,
        String state,
        String condition,
        String run,
        String samples,
        String rate,
        String channels,
        String sha256,
        String inputSha256,
        List<String> evidence,
        String note,
        List<String> together,
        List<Row> values,
        List<Row> harmonics,
        List<String> notes,
        List<ListedDoubt> doubts) {
    /** Copies what it is given. */
    public ListedCapture {
        evidence = List.copyOf(evidence);
        together = List.copyOf(together);
        values = List.copyOf(values);
        harmonics = List.copyOf(harmonics);
        notes = List.copyOf(notes);
        doubts = List.copyOf(doubts);
    }

    /** The figures in two columns that end evenly. */
    public List<List<Row>> valueColumns() {
        return Parts.halves(values);
    }
}
