package clipwitness.job.read;

import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Asks about positions of the gain control that look like fractions of its rotation, {@code 0, 0.25, 0.5, 1}, or like marks of a dial, {@code 0, 5, 10}:
 * read as percent, all captures would stand at its beginning. Who means percent writes the sign.
 */
final class GainScales {
    private static final double PERCENT = 100;
    private static final double DIAL = 10;

    /** Of so few positions nobody can tell. */
    private static final int FEW = 2;

    private static final AllowedRange RANGE =
            AllowedRange.from(0, Unit.PERCENT).to(100).orBare();
    private static final Pattern NUMBER_FIRST = Pattern.compile("[-+.\u2212\\d]");
    private static final Pattern CLOCK = Pattern.compile("(?i)clock|uhr|:");

    private GainScales() {}

    /** Notes one fault, and says so, where all positions are bare and lie within such a scale, and reach beyond its beginning. */
    static boolean refused(List<TableRow> table) {
        List<Field> cells =
                table.stream().flatMap(r -> r.field(TableColumn.GAIN).stream()).toList();
        List<Optional<Double>> numbers = cells.stream().map(GainScales::bare).toList();
        if (numbers.isEmpty() || numbers.stream().anyMatch(Optional::isEmpty)) {
            return false;
        }
        TreeSet<Double> positions =
                numbers.stream().flatMap(Optional::stream).collect(Collectors.toCollection(TreeSet::new));
        boolean several = positions.size() > 1;
        boolean fractions = positions.last() <= 1 && (several || positions.first() % 1 > 0);
        boolean dial = positions.last() == DIAL && positions.size() > FEW;
        if (fractions || dial) {
            double full = fractions ? 1 : DIAL;
            Field largest = cells.get(numbers.indexOf(Optional.of(positions.last())));
            List<String> meant = positions.stream().map(p -> percent(p / full)).toList();
            largest.fault(
                    "all positions of the gain control lie from 0 to " + (int) full + ", as if they were "
                            + (fractions ? "fractions of its rotation" : "marks of a dial")
                            + "; this column is in percent",
                    "Write " + NameWords.all(meant) + ". If percent are meant, write the sign: " + largest.text()
                            + " %");
        }
        return fractions || dial;
    }

    /** The position of one row, percent of the rotation. */
    static OptionalDouble position(TableRow row) {
        Optional<Field> cell = row.field(TableColumn.GAIN);
        if (cell.filter(f -> !NUMBER_FIRST.matcher(f.text()).lookingAt()
                        || CLOCK.matcher(f.text()).find())
                .isPresent()) {
            cell.get()
                    .fault(
                            cell.get().quoted() + " is no position of the gain control",
                            "Write percent of its rotation: 0 and 100 at the ends, 50 in the middle");
            return OptionalDouble.empty();
        }
        return cell.map(f -> f.number(RANGE)).orElse(OptionalDouble.empty());
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
