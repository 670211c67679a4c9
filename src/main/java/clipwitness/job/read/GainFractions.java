package clipwitness.job.read;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Asks about positions of the gain control that look like fractions of its rotation, {@code 0, 0.25, 0.5, 1}: read as percent, all captures would
 * stand at its beginning. Nobody sets a knob to a fraction of a percent by eye; who means it writes the sign of percent.
 */
final class GainFractions {
    private static final double PERCENT = 100;

    private GainFractions() {}

    /** Notes one fault, and says so, where all positions lie from 0 to 1, without unit, and one between them or two of them are there. */
    static boolean refused(List<TableRow> table) {
        List<Field> cells =
                table.stream().flatMap(r -> r.field(TableColumn.GAIN).stream()).toList();
        List<Optional<Double>> numbers = cells.stream().map(GainFractions::bare).toList();
        if (numbers.isEmpty()
                || numbers.stream().anyMatch(n -> n.filter(v -> v <= 1).isEmpty())) {
            return false;
        }
        TreeSet<Double> positions =
                numbers.stream().flatMap(Optional::stream).collect(Collectors.toCollection(TreeSet::new));
        boolean fractions = positions.size() > 1 || positions.first() % 1 > 0;
        if (fractions) {
            int first = numbers.indexOf(Optional.of(positions.last()));
            cells.get(first)
                    .fault(
                            "all positions of the gain control lie from 0 to 1, as if they were fractions of its rotation;"
                                    + " this column is in percent",
                            "Write "
                                    + NameWords.all(positions.stream()
                                            .map(GainFractions::percent)
                                            .toList()) + ". If percent are meant, write the sign: "
                                    + cells.get(first).text() + " %");
        }
        return fractions;
    }

    private static Optional<Double> bare(Field cell) {
        String text = cell.text().replace(',', '.');
        return text.matches("\\d{0,9}(?:\\.\\d{1,9})?") && !text.isEmpty()
                ? Optional.of(Double.parseDouble(text))
                : Optional.empty();
    }

    private static String percent(double fraction) {
        double percent = Math.rint(fraction * PERCENT * PERCENT) / PERCENT;
        return percent == Math.rint(percent) ? String.valueOf((long) percent) : String.valueOf(percent);
    }
}
