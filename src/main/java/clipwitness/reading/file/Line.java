package clipwitness.reading.file;

/**
 * One line of an export's first part.
 *
 * @param number 1-based number of the line
 * @param text   its characters without the line end
 */
public record Line(int number, String text) {
    public boolean blank() {
        return text.isBlank();
    }
}
