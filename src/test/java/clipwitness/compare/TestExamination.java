package clipwitness.compare;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.job.read.JobReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Examines made-up captures of a job with three states: {@code before}, {@code old} (unchanged) and {@code new} (changed). */
public record TestExamination(Path folder) {
    public static final String SHEET = """
            report: {number: T-1, date: 2026-05-04}
            states:
              before: {label: As it came, role: before}
              old: {label: Old pair, role: unchanged}
              new: {label: New pair, role: changed}
            """;

    public JobResults of(Bench... captures) throws IOException, InputException {
        Files.writeString(folder.resolve("job.yaml"), SHEET);
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        return Examination.of(
                JobReader.read(folder),
                "00",
                Stream.of(captures).map(Bench::done).toList());
    }
}
