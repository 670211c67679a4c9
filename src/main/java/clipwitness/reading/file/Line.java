package clipwitness.reading.file;

/**
 * One line of an export's first part.
 *
 * @param number 1-based number of the line
 * @param text   its characters without the line end
 */
record Line(int number, String text) {
    boolean blank() {
        return text.isBlank();
    }
}
