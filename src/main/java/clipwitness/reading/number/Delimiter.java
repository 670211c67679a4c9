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

    private final String characters;

    Delimiter(String characters) {
        this.characters = characters;
    }

    /** The character that ends cells, or the usual one of several. */
    public char first() {
        return characters.charAt(0);
    }

    /** Whether a character ends a cell. */
    public boolean ends(int character) {
        return characters.indexOf(character) >= 0;
    }

    /** Whether any of them is in a line. */
    public boolean within(String line) {
        for (int i = 0; i < characters.length(); i++) {
            if (line.indexOf(characters.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** How many of them are in a line: one cell more it has at most. */
    public int count(String line) {
        int count = 0;
        for (int i = 0; i < characters.length(); i++) {
            for (int at = line.indexOf(characters.charAt(i));
                    at >= 0;
                    at = line.indexOf(characters.charAt(i), at + 1)) {
                count++;
            }
        }
        return count;
    }

    /** Whether blanks end a cell, any number of them counting as one. */
    public boolean blanks() {
        return ends(' ');
    }
}
