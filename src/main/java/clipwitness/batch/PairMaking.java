package clipwitness.batch;

import clipwitness.capture.Export;
import clipwitness.capture.InputException;
import clipwitness.capture.IvCurve;
import clipwitness.capture.Origin;
import clipwitness.capture.Problem;
import clipwitness.compare.CaptureResult;
import clipwitness.compare.CaptureTemperature;
import clipwitness.compare.ClipForecast;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.job.JobReader;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.MatchedPair;
import clipwitness.measure.junction.NamedDevice;
import clipwitness.measure.junction.Pairing;
import clipwitness.measure.junction.Temperature;
import clipwitness.reading.ExportReader;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.report.RankedPair;
import clipwitness.report.Ranking;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** Exports of traced devices to a ranking of pairs, without a job or with the clipper of one. */
public final class PairMaking {
    private final List<NamedDevice> devices;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, String> digests = new TreeMap<>();
    private final Set<String> names = new HashSet<>();

    /**
     * Traces read from files. A file that cannot be read is a problem and does not stop the others.
     *
     * @param files       exports
     * @param temperature temperature of the traces, °C; 23 °C known to 3 K where it is not stated
     */
    public PairMaking(List<Path> files, OptionalDouble temperature) {
        Temperature at = CaptureTemperature.of(temperature);
        Map<String, IvCurve> curves = new LinkedHashMap<>();
        for (Path file : files) {
            try {
                Export export = ExportReader.read(file, file.toString(), ReadingOptions.none());
                CurveChoice choice = CurveChoice.of(export, Optional.empty(), Optional.empty());
                digests.put(file.toString(), Sha256.of(file));
                curves.put(name(file), choice.curve());
            } catch (InputException e) {
                problems.addAll(e.problems());
            } catch (IOException e) {
                problems.add(new Problem(
                        Origin.of(file.toString()), "the file cannot be read (" + e.getMessage() + ")", ""));
            }
        }
        devices = List.copyOf(curves.entrySet()).parallelStream()
                .map(e -> new NamedDevice(e.getKey(), JunctionMeasurement.of(e.getValue(), at)))
                .toList();
    }

    /** What could not be read. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The file's name without its ending; with its folder where two files are called alike. */
    private String name(Path file) {
        String whole = file.getFileName().toString();
        String stem = whole.replaceFirst("\\.[^.]*$", "");
        if (names.add(stem)) {
            return stem;
        }
        names.add(file.toString());
        return file.toString();
    }

    /**
     * The ranking.
     *
     * @param jobFolder job whose clipper the pairs are for
     * @throws InputException if the job cannot be read
     */
    public Ranking ranking(Optional<Path> jobFolder) throws InputException {
        Pairing pairing = Pairing.of(devices);
        Optional<ClipForecast> forecast = jobFolder.isPresent() ? forecast(jobFolder.get()) : Optional.empty();
        List<RankedPair> pairs = new ArrayList<>();
        for (MatchedPair pair : pairing.pairs()) {
            pairs.add(new RankedPair(pair, forecast.map(f -> f.of(pair, devices))));
        }
        return new Ranking(devices, pairs, pairing.left(), Sha256.over(digests));
    }

    private static Optional<ClipForecast> forecast(Path folder) throws InputException {
        Job job = JobReader.read(folder);
        CaptureLoader loader = new CaptureLoader(job, Progress.NONE);
        List<NamedDevice> traced = new ArrayList<>();
        for (CaptureRow row : job.captures()) {
            if (row.kind() == CaptureKind.JUNCTION) {
                CaptureResult capture = loaded(loader, row);
                capture.junction()
                        .ifPresent(j -> traced.add(new NamedDevice(row.device().orElse(row.file()), j)));
            }
        }
        return ClipForecast.of(job, traced);
    }

    private static CaptureResult loaded(CaptureLoader loader, CaptureRow row) throws InputException {
        try {
            return loader.load(row);
        } catch (IOException e) {
            throw new InputException(
                    Origin.of(row.file()), "the file cannot be read (" + e.getMessage() + ")", "Check the folder");
        }
    }
}
