package clipwitness.compare.finding;

import java.util.List;

/** One thing that the figures of a job say: a code, what it is about, and the figures that it rests on. Its words are made by the report. */
public sealed interface Finding
        permits RefusedCapture,
                Answer,
                LevelOnly,
                Onset,
                EqualGain,
                Matched,
                OtherDrive,
                Asymmetric,
                EvenHarmonics,
                SameShape,
                Moved,
                Treble,
                Headroom,
                Deciding,
                Differs,
                Pictured,
                Remainders {
    /** Name in the results; it never changes with the language. */
    String code();

    /** States and condition that it is about. */
    Subject subject();

    /** What it says, in one word of the program. */
    String word();

    /** The figures that it rests on. */
    List<FindingValue> values();
}
