package clipwitness.reading.number;

/** What stands between the cells of a row. */
public enum Delimiter {
    TAB("tabs", "\t"),
    SEMICOLON("semicolons", ";"),
    COMMA("commas", ","),
    /** Any run of blanks and tabs. */
    BLANKS("blanks", " \t"),
    /** One comma, semicolon or tab with blanks around it, or a run of blanks alone. */
    MIXED("a mixture of commas, semicolons, tabs and blanks", ",;\t ");

    private final String words;
    private final String characters;

    Delimiter(String words, String characters) {
        this.words = words;
        this.characters = characters;
    }

    /** As the evidence names it. */
    public String words() {
        return words;
    }

    /** The character that ends cells, or the usual one of several. */
    public char first() {
        return characters.charAt(0);
    }

    /** Whether a character ends a cell. */
    public boolean ends(int character) {
        return characters.indexOf(character) >= 0;
    }

    /** Whether blanks end a cell, any number of them counting as one. */
    public boolean blanks() {
        return ends(' ');
    }
}
