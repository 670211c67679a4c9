package clipwitness.draft.name;

/** What a word of a name can say of the kind of a capture. */
public enum KindWord {
    /** A sweep, or one of several steady sines. */
    RESPONSE,
    /** No signal. */
    NOISE,
    /** Playing. */
    LISTENING,
    /** A traced device. */
    JUNCTION
}
