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

    private static final int ASCII = 128;

    private final String characters;
    private final boolean[] ends = new boolean[ASCII];

    Delimiter(String characters) {
        this.characters = characters;
        characters.chars().forEach(c -> ends[c] = true);
    }

    /** The character that ends cells, or the usual one of several. */
    public char first() {
        return characters.charAt(0);
    }

    /** Whether a character ends a cell. */
    public boolean ends(int character) {
        return character >= 0 && character < ASCII && ends[character];
    }

    /** Whether blanks end a cell, any number of them counting as one. */
    public boolean blanks() {
        return ends(' ');
    }
}
