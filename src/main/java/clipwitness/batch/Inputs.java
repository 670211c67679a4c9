package clipwitness.batch;

import clipwitness.batch.load.Sha256;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fault.InputException;
import clipwitness.fault.Meanwhile;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.job.Photo;
import clipwitness.job.ReadJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Everything that a report is made from: job sheet, captures table, exports, photos and logo, each by its name within the job folder. */
final class Inputs {
    private final Job job;
    private final Map<String, String> digests = new TreeMap<>();

    private Inputs(Job job) {
        this.job = job;
    }

    /** Where the inputs of a job lie. */
    static List<Path> files(Job job) {
        List<String> names = new ArrayList<>(List.of(Job.SHEET_FILE, Job.TABLE_FILE));
        for (CaptureRow row : job.captures()) {
            names.add(row.file());
            row.inputFile().ifPresent(names::add);
        }
        names.addAll(pictures(job));
        return names.stream().map(job.folder()::resolve).toList();
    }

    /**
     * The inputs of a job whose captures were read.
     *
     * @throws InputException if an export was changed between two rows that name it, or a picture is lost
     */
    static Inputs of(ReadJob read, List<CaptureResult> captures) throws InputException {
        Inputs inputs = new Inputs(read.job());
        inputs.digests.put(Job.SHEET_FILE, Sha256.of(read.sheet()));
        inputs.digests.put(Job.TABLE_FILE, Sha256.of(read.table()));
        for (CaptureResult c : captures) {
            inputs.add(c.row().file(), c.export().sha256());
            if (c.row().inputFile().isPresent()) {
                inputs.add(c.row().inputFile().get(), c.export().inputSha256().orElseThrow());
            }
        }
        for (String picture : pictures(read.job())) {
            inputs.add(picture, inputs.ofFile(picture));
        }
        return inputs;
    }

    /** SHA-256 of each by its name, sorted. */
    Map<String, String> digests() {
        return Collections.unmodifiableMap(digests);
    }

    /**
     * The inputs of a job as its files are now.
     *
     * @throws InputException if a file is lost
     */
    static Inputs ofFiles(ReadJob read) throws InputException {
        Inputs inputs = new Inputs(read.job());
        inputs.digests.put(Job.SHEET_FILE, Sha256.of(read.sheet()));
        inputs.digests.put(Job.TABLE_FILE, Sha256.of(read.table()));
        Set<String> names = new LinkedHashSet<>(pictures(read.job()));
        for (CaptureRow row : read.job().captures()) {
            names.add(row.file());
            row.inputFile().ifPresent(names::add);
        }
        for (String name : names) {
            inputs.add(name, inputs.ofFile(name));
        }
        return inputs;
    }

    /** One digest over all of them. */
    String digest() {
        return Sha256.over(digests);
    }

    /**
     * To be asked when the pictures have been printed, for which they are read again.
     *
     * @throws InputException if one is no longer what the digest is of
     */
    void requireSamePictures() throws InputException {
        for (String picture : pictures(job)) {
            add(picture, ofFile(picture));
        }
    }

    private static List<String> pictures(Job job) {
        List<String> pictures =
                new ArrayList<>(job.sheet().photos().stream().map(Photo::file).toList());
        job.sheet().shop().logo().ifPresent(pictures::add);
        return pictures;
    }

    private String ofFile(String file) throws InputException {
        try {
            return Sha256.of(job.folder().resolve(file));
        } catch (IOException e) {
            throw new InputException(List.of(Meanwhile.lost(file)));
        }
    }

    private void add(String file, String digest) throws InputException {
        String earlier = digests.putIfAbsent(file, digest);
        if (earlier != null && !earlier.equals(digest)) {
            throw new InputException(List.of(Meanwhile.changed(file)));
        }
    }
}
