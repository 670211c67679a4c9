package clipwitness.compare.plan;

import clipwitness.compare.ready.Readiness;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ReadyItem;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.Stimulus;
import clipwitness.quantity.ItemQuantity;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * Finds the least effort with which a limit can be kept: records as short, waves as low on the screen, positions set as few times as the rules of {@link
 * Readiness} allow for captures of a {@link ModelUnit}.
 */
public final class PlanSearch {
    /** A test tone whose twentieth harmonic, 8 kHz, still passes the filters behind most clippers, where the sheet states none. */
    private static final double USUAL_FREQUENCY = 400;

    private static final double USUAL_LEVEL = 0.1;
    private static final List<Double> STOPS = List.of(0.0, 100.0);
    private static final List<Double> GAINS = List.of(0.0, 25.0, 50.0, 75.0, 100.0);
    /** Few enough that a sample more than 45 times a period is kept, as many as the README asks for. */
    private static final int PERIODS = 6;

    private static final List<Integer> SAMPLES = List.of(1_000, 2_500, 5_000, 10_000, 25_000);
    /** Ranges follow in steps of 2 to 2.5: a wave that fills less fits the next finer one. */
    private static final List<Double> SCREENS = List.of(0.4, 0.5, 0.6);

    private static final double FULL = 0.8;
    /** More nobody sets by hand. */
    private static final int MOST_RUNS = 6;

    /** A change of half the limit is then still decided. */
    private static final double MARGIN = 0.5;

    private static final double NULL_MARGIN = 3;
    /** Open E string of a bass, equal temperament from A = 440 Hz, Hz. */
    private static final double LOWEST_STRING = 41.2;

    private static final List<Double> SECONDS = List.of(0.5, 1.0, 2.0, 5.0);
    /** Points of the spectrum 2 Hz apart: the harmonics of the mains stand far from each other, and the hiss between them is known well, s. */
    private static final double LEAST_NOISE = 0.5;
    /** Points of the spectrum 1 Hz apart: the thirteen that one figure takes span a third of the lowest string's frequency, s. */
    private static final double LEAST_SWEEP = 1;

    private static final double RATE = 50_000;
    private static final List<ItemQuantity> OF_WAVES = List.of(
            ItemQuantity.LEVEL,
            ItemQuantity.THD,
            ItemQuantity.ASYMMETRY,
            ItemQuantity.CREST_FACTOR,
            ItemQuantity.NULL_DEPTH);

    private final JobSheet model;
    private final ModelUnit unit;

    private PlanSearch(JobSheet job, Stimulus stimulus) {
        model = UsualSheet.ofModel(job, stimulus);
        unit = new ModelUnit(model);
    }

    /**
     * The plan for a sheet.
     *
     * @param job    the sheet
     * @param stated whether it is a job's own
     */
    public static BenchPlan of(JobSheet job, boolean stated) {
        double frequency = job.stimulus().frequency().orElse(USUAL_FREQUENCY);
        double level = job.stimulus().level().orElse(USUAL_LEVEL);
        PlanSearch search = new PlanSearch(
                job, new Stimulus(Stimulus.SINE, OptionalDouble.of(frequency), OptionalDouble.of(level)));
        Effort effort = search.effort();
        return new BenchPlan(
                job,
                stated,
                frequency,
                level,
                GAINS,
                effort.wave(),
                effort.runs(),
                search.reach(search.items(search.captures(GAINS, effort.runs(), effort.wave())), OF_WAVES),
                search.longRecord(
                        LEAST_NOISE, t -> search.unit.noise(t, RATE), List.of(ItemQuantity.NOISE, ItemQuantity.HUM)),
                search.longRecord(LEAST_SWEEP, t -> search.unit.sweep(t, RATE), List.of(ItemQuantity.RESPONSE)));
    }

    /** The shortest record with which positions need to be set as few times as with any: memory costs less than hands. */
    private Effort effort() {
        Effort best = null;
        for (int samples : SAMPLES) {
            BenchPlan.WaveRecord record = new BenchPlan.WaveRecord(PERIODS, samples, FULL);
            int most = best == null ? MOST_RUNS : best.runs();
            Effort effort = new Effort(record, runs(record, most), holdsAtStops(record));
            if (best == null || effort.isBetterThan(best)) {
                best = effort;
            } else if (best.stops()) {
                break;
            }
        }
        return lowest(best);
    }

    /**
     * A way to capture waves.
     *
     * @param wave  record
     * @param runs  how many times positions between the end stops are set
     * @param stops whether it is enough at the end stops
     */
    private record Effort(BenchPlan.WaveRecord wave, int runs, boolean stops) {
        boolean isBetterThan(Effort other) {
            return stops == other.stops ? runs < other.runs : stops;
        }
    }

    /** The same with the lowest wave on the screen. */
    private Effort lowest(Effort effort) {
        return SCREENS.stream()
                .map(s -> new BenchPlan.WaveRecord(PERIODS, effort.wave().samples(), s))
                .filter(w -> holdsAtStops(w) == effort.stops() && runs(w, effort.runs() + 1) <= effort.runs())
                .findFirst()
                .map(w -> new Effort(w, effort.runs(), effort.stops()))
                .orElse(effort);
    }

    private boolean holdsAtStops(BenchPlan.WaveRecord record) {
        return items(captures(STOPS, 1, record)).stream().allMatch(this::clears);
    }

    /** Whether a smallest change leaves half of its limit to the change itself; of a null depth, 3 dB. */
    private boolean clears(ReadyItem item) {
        double smallest = item.smallestChange().value().orElse(Double.POSITIVE_INFINITY);
        return item.quantity() == ItemQuantity.NULL_DEPTH
                ? smallest <= item.limit() - NULL_MARGIN
                : smallest <= MARGIN * item.limit();
    }

    /** How many times positions between the end stops are set, at most; of the null depth, which takes one capture, it decides nothing. */
    private int runs(BenchPlan.WaveRecord record, int most) {
        int runs = 1;
        while (runs < most && !holdsBetween(runs, record)) {
            runs++;
        }
        return runs;
    }

    private boolean holdsBetween(int runs, BenchPlan.WaveRecord record) {
        return items(captures(GAINS, runs, record)).stream()
                .filter(i -> Reach.isBetween(i) && i.quantity() != ItemQuantity.NULL_DEPTH)
                .allMatch(this::clears);
    }

    private List<CaptureResult> captures(List<Double> gains, int runs, BenchPlan.WaveRecord record) {
        List<CaptureResult> captures = new ArrayList<>();
        for (double gain : gains) {
            boolean stop = STOPS.contains(gain);
            for (int run = 1; run <= (stop ? 1 : runs); run++) {
                captures.add(unit.wave(gain, stop ? 0 : off(run, runs), run, record));
            }
        }
        return captures;
    }

    /** Errors of a knob whose sample standard deviation over all runs is that of the sheet, percent. */
    private double off(int run, int runs) {
        boolean middle = runs % 2 == 1 && run == runs;
        double spread = runs % 2 == 1 ? 1 : Math.sqrt((runs - 1.0) / runs);
        return middle ? 0 : 100 * model.bench().knobRepeatability() * spread * (run % 2 == 0 ? 1 : -1);
    }

    private List<ReadyItem> items(List<CaptureResult> captures) {
        Job job = new Job(
                Path.of(""), model, captures.stream().map(CaptureResult::row).toList());
        return Readiness.of(job, captures).items();
    }

    private List<Reach> reach(List<ReadyItem> items, List<ItemQuantity> quantities) {
        return quantities.stream()
                .map(q -> Reach.of(q, model.limits().of(q.limit().orElseThrow()), items))
                .toList();
    }

    private BenchPlan.LongRecord longRecord(
            double least, DoubleFunction<CaptureResult> capture, List<ItemQuantity> quantities) {
        for (double seconds : SECONDS.stream().filter(s -> s >= least).toList()) {
            CaptureResult made = capture.apply(seconds);
            List<ReadyItem> items = items(List.of(made));
            boolean last = seconds == SECONDS.get(SECONDS.size() - 1);
            boolean all = items.size() == quantities.size() && items.stream().allMatch(this::clears);
            if (last || (all && reachesLowest(made))) {
                return new BenchPlan.LongRecord(seconds, RATE, reach(items, quantities));
            }
        }
        throw new IllegalStateException("no record was tried");
    }

    /** Whether a response begins at the lowest string of a bass or below. */
    private static boolean reachesLowest(CaptureResult capture) {
        return capture.response()
                .map(r -> r.points().stream()
                        .filter(p -> p.gain().value().isPresent())
                        .anyMatch(p -> p.frequency() <= LOWEST_STRING))
                .orElse(true);
    }
}
