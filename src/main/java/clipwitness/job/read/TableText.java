package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.Job;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Takes the text of a table apart, with the separator that its header row uses: comma, semicolon or tab. */
final class TableText {
    private static final List<String> SEPARATORS = List.of(",", ";", "\t");

    private TableText() {}

    /**
     * A row that is not blank.
     *
     * @param number 1-based line on which it begins
     * @param cells  its cells, without the space around them
     */
    record Line(int number, List<String> cells) {
        Origin origin(String column) {
            return new Origin(Job.TABLE_FILE, number, NameWords.clipped(column));
        }

        /** A cell by its index from 0, empty beyond the end of the row. */
        String cell(int index) {
            return index < cells.size() ? cells.get(index) : "";
        }

        private boolean isBlank() {
            return cells.stream().allMatch(String::isEmpty);
        }
    }

    /**
     * The rows of a table, blank ones left out.
     *
     * @throws InputException if its quotes are out of order
     */
    static List<Line> lines(String text) throws InputException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator(text))
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
        List<Line> lines = new ArrayList<>();
        long begin = 1;
        try (CSVParser parser = CSVParser.parse(text, format)) {
            for (Iterator<CSVRecord> records = parser.iterator(); records.hasNext(); ) {
                Line line = new Line(
                        (int) begin, records.next().stream().map(String::strip).toList());
                if (!line.isBlank()) {
                    lines.add(line);
                }
                begin = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException e) {
            throw new InputException(
                    ErrorCode.BAD_TABLE,
                    Origin.of(Job.TABLE_FILE, (int) begin),
                    "the quotes of this row are out of order",
                    "Put a cell in quotes as a whole, and double a quote inside it");
        }
        return lines;
    }

    /** The separator that makes most column names of the first row that is not blank. */
    private static String separator(String text) {
        String header = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        String best = SEPARATORS.get(0);
        for (String separator : SEPARATORS) {
            if (columns(header, separator) > columns(header, best)) {
                best = separator;
            }
        }
        return best;
    }

    private static long columns(String header, String separator) {
        return List.of(header.replace("\"", "").split(separator, -1)).stream()
                .filter(name -> TableColumn.of(name).isPresent())
                .count();
    }
}
