package clipwitness.report;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Places;
import clipwitness.fault.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Files of earlier runs that lie beside results and that this run has not made anew: the stack trace of a run that failed, the PDF of a template that is
 * no longer asked for, the report of a job that was renamed. They look as if they belonged there, so they are named; nothing is deleted.
 */
public final class Leftovers {
    private static final Set<String> SUMMARY = Set.of("summary.csv", "summary.html");

    private Leftovers() {}

    /**
     * Files of one report's number.
     *
     * @param folder  folder of results
     * @param number  the report's number
     * @param written names of the files that belong to it now
     */
    public static Optional<Problem> ofNumber(Path folder, String number, Collection<String> written) {
        return told(
                folder,
                name -> !written.contains(name) && name.startsWith(number + "-") && !isOfAnother(folder, name, number));
    }

    /**
     * Files of numbers that no report has.
     *
     * @param folder  folder of results
     * @param numbers numbers of the reports there
     */
    public static Optional<Problem> ofOthers(Path folder, Collection<String> numbers) {
        return told(
                folder,
                name -> !SUMMARY.contains(name)
                        && numbers.stream().noneMatch(n -> name.startsWith(n + "-") || name.equals(n + ".pdf")));
    }

    /** {@code HL-1-b.pdf} is of the number {@code HL-1-b} where that has results. */
    private static boolean isOfAnother(Path folder, String name, String number) {
        for (int end = name.length(); end > number.length(); end--) {
            if (Files.exists(folder.resolve(name.substring(0, end) + "-results.json"))) {
                return true;
            }
        }
        return false;
    }

    private static Optional<Problem> told(Path folder, Predicate<String> suspect) {
        List<String> names;
        try (Stream<Path> files = Files.list(folder)) {
            names = files.filter(f -> suspect.test(f.getFileName().toString()))
                    .filter(Leftovers::isOwn)
                    .map(f -> f.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return Optional.empty(); // what cannot be looked at is not known to be left over
        }
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(new Problem(
                        ErrorCode.LEFT_OVER,
                        Origin.of(folder.toString()),
                        Places.listed(names) + (names.size() == 1 ? " is" : " are")
                                + " of an earlier run and not of this one",
                        "Move away what you want to keep, and delete the rest"));
    }

    private static boolean isOwn(Path file) {
        try {
            return OwnMark.isOn(file);
        } catch (IOException e) {
            return false;
        }
    }
}
