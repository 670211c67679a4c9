package clipwitness.job;

import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.job.read.JobReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A sound job folder that a test spoils. */
public record TestJob(Path folder) {
    /** Sections of a sound sheet, each beginning with its key. */
    private static final List<String> SECTIONS = List.of(
            "report: {number: B-1, date: 2026-05-04}\n",
            "stimulus: {shape: sine, frequency: 1 kHz, level: 100 mV}\n",
            "states:\n  received: {role: before}\n  original: {role: unchanged}\n");

    public static final String TABLE =
            "file,state,kind,gain\nreceived.csv,received,waveform,50\noriginal.csv,original,waveform,50\n";

    /** Signature of a PNG picture (PNG specification, 3rd edition, 5.2). */
    static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0};

    /** A sound job in an empty folder. */
    public static TestJob in(Path folder) throws IOException {
        TestJob job = new TestJob(folder);
        Files.createDirectory(folder.resolve("sub"));
        job.write("job.yaml", String.join("", SECTIONS));
        job.write("captures.csv", TABLE);
        job.write("received.csv", "0,0\n");
        job.write("original.csv", "0,0\n");
        job.write("photo.jpg", "no picture");
        job.write("word.png", "no");
        Files.write(folder.resolve("board.png"), PNG);
        return job;
    }

    /** Writes a sheet: these lines, then the sections of a sound sheet whose keys the lines do not have. */
    public TestJob sheet(String lines) throws IOException {
        StringBuilder sheet = new StringBuilder(lines);
        for (String section : SECTIONS) {
            String key = section.substring(0, section.indexOf(':') + 1);
            if (lines.lines().noneMatch(line -> line.startsWith(key))) {
                sheet.append(section);
            }
        }
        return write("job.yaml", sheet.toString());
    }

    public TestJob table(String text) throws IOException {
        return write("captures.csv", text);
    }

    public TestJob write(String name, String text) throws IOException {
        Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    public Job read() throws InputException {
        return JobReader.read(folder);
    }

    /** Messages of all faults, none for a sound job. */
    public List<String> messages() {
        try {
            read();
            return new ArrayList<>();
        } catch (InputException e) {
            return e.problems().stream().map(Problem::message).toList();
        }
    }
}
