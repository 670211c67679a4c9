package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Lines at multiples of the mains frequency that lie between the harmonics of a tone, above 0.8 of its fundamental: hum that is bent, or that
 * goes through a bent curve together with the tone. A line counts where it stands out of the noise between the harmonics and is as strong as
 * anything within half a period over the record of its place.
 *
 * @param lines lines found, the strongest first
 */
public record MainsLines(List<Line> lines) {
    /** No lines. */
    public static final MainsLines NONE = new MainsLines(List.of());

    private static final double LOWEST = 0.8;
    private static final int HIGHEST_MULTIPLE = 40;

    /** Energy over that of one cosine of noise: one of forty lines of noise reaches it once in 10¹¹ records. */
    private static final double STANDS_OUT = 60;

    private static final double WORTH_A_LOOK = 12;
    private static final double APART = 0.5;

    /** The mains keep their frequency within so much (measurement book, section 8). */
    private static final double MAINS_WANDER = 0.01;

    private static final double FINEST_CYCLE = 0.1;

    /** Copies the list. */
    public MainsLines {
        lines = List.copyOf(lines);
    }

    /**
     * One line.
     *
     * @param cycles    periods over the record
     * @param cosine    about the middle of the record, V
     * @param sine      likewise
     * @param multiple  nominal frequency over that of the mains
     * @param noise     standard uncertainty of each coefficient, V
     */
    public record Line(double cycles, double cosine, double sine, int multiple, double noise) {
        /** Amplitude, V. */
        public double amplitude() {
            return Math.hypot(cosine, sine);
        }

        double at(double share) {
            double angle = 2 * Math.PI * cycles * (share - 0.5);
            return cosine * Math.cos(angle) + sine * Math.sin(angle);
        }
    }

    /**
     * Looks for lines.
     *
     * @param rest  what the mean cycle leaves of the record
     * @param mains periods of the mains over the record
     * @param least smallest amplitude that counts, V
     */
    public static MainsLines of(CosineSeries rest, double mains, double least) {
        List<Line> lines = new ArrayList<>();
        for (int n = 1; n <= HIGHEST_MULTIPLE && rest.noiseTerms() > 0; n++) {
            double cycles = n * mains;
            boolean inside = cycles > LOWEST * rest.periods() && 2 * cycles < rest.last();
            if (inside && rest.isBetween(2 * cycles) && isWorthALook(rest, cycles)) {
                Line line = strongest(rest, cycles, n);
                boolean clear = rest.isBetween(2 * line.cycles) && energy(rest, line) > STANDS_OUT * rest.density();
                if (clear && line.amplitude() - 2 * line.noise > least && isPeak(rest, line)) {
                    lines.add(line);
                }
            }
        }
        lines.sort(Comparator.comparingDouble(Line::amplitude).reversed());
        return new MainsLines(lines);
    }

    private static boolean isWorthALook(CosineSeries rest, double cycles) {
        double reach = 1 + 2 * MAINS_WANDER * cycles;
        int from = (int) Math.max(1, Math.floor(2 * cycles - reach));
        int to = (int) Math.min(rest.last(), Math.ceil(2 * cycles + reach));
        boolean found = false;
        for (int j = from; j <= to && !found; j++) {
            found = rest.energy(j) > WORTH_A_LOOK * rest.density();
        }
        return found;
    }

    /** The strongest line within the wander of the mains; those are fitted that may be it. */
    private static Line strongest(CosineSeries rest, double cycles, int multiple) {
        double[] beside = beside(cycles);
        LineZoom zoom = rest.zoom(cycles, MAINS_WANDER * cycles);
        double[] about = Arrays.stream(beside).map(zoom::amplitude).toArray();
        double least = Arrays.stream(about).max().orElseThrow() - 2 * zoom.bound();
        Line best = line(rest, cycles, multiple);
        for (int i = 0; i < beside.length; i++) {
            if (about[i] >= least) {
                Line other = line(rest, beside[i], multiple);
                best = other.amplitude() > best.amplitude() ? other : best;
            }
        }
        return best;
    }

    /** Periods over the record of the lines that are looked at. */
    private static double[] beside(double cycles) {
        int steps = (int) Math.ceil(MAINS_WANDER * cycles / FINEST_CYCLE);
        return IntStream.rangeClosed(-steps, steps)
                .mapToDouble(i -> cycles * (1 + MAINS_WANDER * i / Math.max(1, steps)))
                .toArray();
    }

    private static Line line(CosineSeries rest, double cycles, int multiple) {
        double[] found = rest.line(cycles);
        return new Line(cycles, found[0], found[1], multiple, Math.sqrt(2 * rest.density() / rest.length()));
    }

    private static double energy(CosineSeries rest, Line line) {
        return line.amplitude() * line.amplitude() * rest.length() / 2;
    }

    private static boolean isPeak(CosineSeries rest, Line line) {
        return line(rest, line.cycles - APART, line.multiple).amplitude() < line.amplitude()
                && line(rest, line.cycles + APART, line.multiple).amplitude() < line.amplitude();
    }

    /** The record without them. */
    public Samples without(Samples samples) {
        double[] values = samples.toArray();
        for (int i = 0; i < values.length; i++) {
            for (Line line : lines) {
                values[i] -= line.at((i + 0.5) / values.length);
            }
        }
        return Samples.of(values);
    }

    /** These and what was found of them in the record without them. */
    public MainsLines plus(MainsLines more) {
        List<Line> all = new ArrayList<>(lines);
        all.addAll(more.lines);
        return new MainsLines(all);
    }
}
