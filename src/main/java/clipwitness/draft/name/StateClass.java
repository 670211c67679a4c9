package clipwitness.draft.name;

/** What a word of a name can say of the state that a capture shows. */
public enum StateClass {
    /** As the unit came in. */
    BEFORE,
    /** As the unit was built: before the work where nothing else is, else what must still be so. */
    ORIGINAL,
    /** After the work, whatever that was. */
    AFTER,
    /** Must still be what it was. */
    UNCHANGED,
    /** Meant to differ. */
    CHANGED,
    /** The fault as it came in. */
    FAULT,
    /** A position of a switch. */
    POSITION
}
