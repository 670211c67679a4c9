package clipwitness.batch;

import clipwitness.batch.choice.CurveChoice;
import clipwitness.batch.load.Exhausted;
import clipwitness.batch.load.ExportSize;
import clipwitness.batch.load.Loading;
import clipwitness.batch.load.Sha256;
import clipwitness.capture.IvCurve;
import clipwitness.compare.device.ClipForecast;
import clipwitness.compare.judge.CaptureTemperature;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.CaptureKind;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.MatchedPair;
import clipwitness.measure.match.NamedDevice;
import clipwitness.measure.match.Pairing;
import clipwitness.reading.ExportReader;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.report.RankingWords;
import clipwitness.report.data.RankedPair;
import clipwitness.report.data.Ranking;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Exports of traced devices to a ranking of pairs, without a job or with the clipper of one. */
public final class PairMaking {
    private final Progress progress;
    private final Temperature temperature;
    private final List<NamedDevice> devices;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> notes = new ArrayList<>();
    private final Map<String, String> digests = new TreeMap<>();

    /**
     * Traces read from files. A file that cannot be read is a problem and does not stop the others.
     *
     * @param files       exports
     * @param temperature temperature of the traces, °C; 23 °C known to 3 K where it is not stated
     * @param progress    told how far the reading has come
     */
    public PairMaking(List<Path> files, OptionalDouble temperature, Progress progress) {
        this.progress = progress;
        this.temperature = CaptureTemperature.of(temperature);
        progress.expect(files.stream().mapToLong(ExportSize::of).sum());
        Map<String, IvCurve> curves = new LinkedHashMap<>();
        for (Path file : files.stream().distinct().toList()) { // no device is its own partner
            curve(file).ifPresent(c -> curves.put(curves.containsKey(stem(file)) ? file.toString() : stem(file), c));
        }
        devices = List.copyOf(curves.entrySet()).parallelStream()
                .map(e -> new NamedDevice(e.getKey(), JunctionMeasurement.of(e.getValue(), this.temperature)))
                .toList();
    }

    private Optional<IvCurve> curve(Path file) {
        String name = file.toString();
        try {
            MessageDigest digest = Sha256.start();
            CurveChoice choice = CurveChoice.of(ExportReader.read(file, name, ReadingOptions.none(), progress, digest));
            digests.put(name, Sha256.end(digest));
            choice.more()
                    .ifPresent(more -> notes.add(new Problem(
                            ErrorCode.SEVERAL_RECORDS,
                            Origin.of(name),
                            RankingWords.said(more),
                            "Write each device's curve into a file of its own to pair it too")));
            return Optional.of(choice.curve());
        } catch (InputException e) {
            problems.addAll(e.problems());
        } catch (OutOfMemoryError e) {
            problems.add(Exhausted.memory(name));
        }
        return Optional.empty();
    }

    /** The file's name without its ending: a device is called so; with its folder where two files are called alike. */
    private static String stem(Path file) {
        return file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    }

    /** What could not be read. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** What was read but left out. */
    public List<Problem> notes() {
        return List.copyOf(notes);
    }

    /**
     * The ranking.
     *
     * @param jobFolder job whose clipper the pairs are for
     * @throws InputException if the job cannot be read
     */
    public Ranking ranking(Optional<Path> jobFolder) throws InputException {
        Pairing pairing = Pairing.of(devices);
        Optional<Job> job = jobFolder.isPresent() ? Optional.of(JobReader.read(jobFolder.get())) : Optional.empty();
        Optional<ClipForecast> forecast = job.isPresent() ? forecast(job.get()) : Optional.empty();
        List<RankedPair> pairs = new ArrayList<>();
        for (MatchedPair pair : pairing.pairs()) {
            pairs.add(new RankedPair(pair, forecast.map(f -> f.of(pair, devices))));
        }
        return new Ranking(
                devices,
                pairs,
                pairing.left(),
                temperature,
                job.map(j -> new Ranking.Purpose(
                        j.sheet().report().number(),
                        forecast.map(ClipForecast::original).orElse(List.of()),
                        forecast.map(f -> OptionalDouble.of(f.source())).orElse(OptionalDouble.empty()))),
                Sha256.over(digests));
    }

    private Optional<ClipForecast> forecast(Job job) throws InputException {
        return ClipForecast.of(job, Loading.some(job, r -> r.kind() == CaptureKind.JUNCTION, progress));
    }
}
