package clipwitness.report.model;

import java.util.List;

/**
 * A capture with all that was read of it; what was measured is in a {@link CaptureSheet}.
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
 * @param kept      length and level of a recording of playing, and that nothing is judged by it; empty for all else
 * @param note      note of the captures table
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
        String kept,
        String note,
        List<ListedDoubt> doubts) {
    /** Copies what it is given. */
    public ListedCapture {
        evidence = List.copyOf(evidence);
        doubts = List.copyOf(doubts);
    }
}
