package clipwitness.reading.number;

/** What stands between the cells of a row. */
public enum Delimiter {
    TAB("\t"),
    SEMICOLON(";"),
    COMMA(","),
    /** Any run of blanks and tabs. */
    BLANKS(" \t"),
    /** One comma, semicolon or tab with blanks around it, or a run of blanks alone. */
    MIXED(",;\t ");

    private static final int BITS = Long.SIZE;

    private final String characters;
    /** A bit for each of the characters, all of which are below 64. */
    private final long ends;

    Delimiter(String characters) {
        this.characters = characters;
        this.ends = characters.chars().mapToLong(c -> 1L << c).sum();
    }

    /** The character that ends cells, or the usual one of several. */
    public char first() {
        return characters.charAt(0);
    }

    /** Whether a character ends a cell. */
    public boolean ends(int character) {
        return character >= 0 && character < BITS && (ends >>> character & 1) == 1;
    }

    /** Whether blanks end a cell, any number of them counting as one. */
    public boolean blanks() {
        return ends(' ');
    }
}
