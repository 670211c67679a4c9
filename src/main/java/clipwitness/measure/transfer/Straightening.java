package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.ExtremeSearch;
import clipwitness.measure.wave.FittedWave;
import clipwitness.reason.FigureReason;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.MeanCycle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import org.apache.commons.math3.complex.Complex;

/**
 * A wave without the low-pass and the high-pass behind its clipper: each harmonic that stands out of the noise is divided by their response, the
 * delay of the fundamental taken out. What the corners leave open, and the noise of the raised harmonics, is found by drawing both (JCGM 101,
 * 7) and computing the figures again; the seed is fixed.
 */
final class Straightening {
    private static final int DRAWS = 16;
    private static final long SEED = 1;
    private static final int ALL = Integer.MAX_VALUE;
    private static final double LARGEST_SHARE = 0.8;

    private final FittedWave wave;
    private final FittedWave input;
    private final CornerSearch search;
    private final InputPlaces inputs;
    private final Function<HarmonicFit.Change, MeanCycle> variants;

    Straightening(FittedWave wave, FittedWave input, Branches branches) {
        this.wave = wave;
        this.input = input;
        this.search = new CornerSearch(branches);
        this.inputs = new InputPlaces(wave, input);
        this.variants = wave.cycle().variants();
    }

    private static double noNoise() {
        return 0;
    }

    /** The corners. */
    Corners corners() {
        return search.best();
    }

    /** Highest of the fitted harmonics that stands out of the noise. */
    private int highest() {
        int highest = wave.count();
        while (highest > 1 && !FittedWave.standsOut(wave.fit().amplitude(highest), wave.quadratureVariance(highest))) {
            highest--;
        }
        return highest;
    }

    /** The figures from the straightened wave. */
    CurveFigures figures() {
        FittedWave straight = straight(search.best(), ALL, Straightening::noNoise);
        return new CurveFigures(straight, input, inputs, ExtremeSearch.of(straight, 1), ExtremeSearch.of(straight, -1));
    }

    /**
     * Adds what corners and raised harmonics leave open, and as a bound what half as many raised harmonics would have changed: those in the
     * noise are not raised, which rounds corners of the wave.
     *
     * @param figures from the straightened wave
     */
    Map<WaveformQuantity, Measured> widened(CurveFigures figures) {
        FittedWave straight = figures.output();
        Map<WaveformQuantity, Double> base = numbers(figures.withExtremes(extreme(straight, 1), extreme(straight, -1)));
        Map<WaveformQuantity, Double> fewer = drawn(search.best(), highest() / 2, Straightening::noNoise);
        List<Map<WaveformQuantity, Double>> others = new ArrayList<>();
        Random random = new Random(SEED);
        for (int draw = 0; draw < DRAWS; draw++) {
            others.add(drawn(search.drawn(random), ALL, random::nextGaussian));
        }
        Map<WaveformQuantity, Measured> widened = new EnumMap<>(WaveformQuantity.class);
        figures.values()
                .forEach((quantity, figure) -> widened.put(
                        quantity,
                        figure.asValue()
                                .map(v -> v.plus(Source.STRAIGHTENING, spread(quantity, base, others))
                                        .plus(Source.METHOD, spread(quantity, base, List.of(fewer)) / Math.sqrt(3)))
                                .map(v -> known(quantity, v))
                                .orElse(figure)));
        return widened;
    }

    /** An onset whose expanded uncertainty reaches 80 % of its value is none: the ends of the interval would be to one another as one to nine. */
    private static Measured known(WaveformQuantity quantity, Measured.Value value) {
        boolean onset = quantity == WaveformQuantity.ONSET_UP || quantity == WaveformQuantity.ONSET_DOWN;
        return onset && value.expanded() >= LARGEST_SHARE * value.number()
                ? Measured.refused(value.unit(), FigureReason.ONSET_BEHIND_FILTERS)
                : value;
    }

    private static double spread(
            WaveformQuantity quantity, Map<WaveformQuantity, Double> base, List<Map<WaveformQuantity, Double>> others) {
        if (!base.containsKey(quantity)) {
            return 0;
        }
        double centre = base.get(quantity);
        return Math.sqrt(others.stream()
                .filter(o -> o.containsKey(quantity))
                .mapToDouble(o -> Math.pow(o.get(quantity) - centre, 2))
                .average()
                .orElse(0));
    }

    private Map<WaveformQuantity, Double> drawn(Corners corners, int most, DoubleSupplier gauss) {
        FittedWave straight = straight(corners, most, gauss);
        return numbers(new CurveFigures(straight, input, inputs, extreme(straight, 1), extreme(straight, -1)));
    }

    private static Map<WaveformQuantity, Double> numbers(CurveFigures figures) {
        Map<WaveformQuantity, Double> numbers = new EnumMap<>(WaveformQuantity.class);
        figures.values().forEach((quantity, figure) -> {
            OptionalDouble value = figure.value();
            if (value.isPresent()) {
                numbers.put(quantity, value.getAsDouble());
            }
        });
        return numbers;
    }

    /** The highest of the bins, each averaged with its neighbours: near enough to compare two straightenings of one wave. */
    private static Extreme extreme(FittedWave wave, int sign) {
        double[] values = wave.cycle().values();
        int bins = values.length;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < bins; i++) {
            double sum = values[(i + bins - 1) % bins] + values[i] + values[(i + 1) % bins];
            highest = Math.max(highest, sign * sum / 3);
        }
        return new Extreme(sign * highest, 0, 0, 0);
    }

    /** The wave with its harmonics divided by a response; with noise, as it may have been, too: the samples hold that of the unraised harmonics already. */
    private FittedWave straight(Corners corners, int most, DoubleSupplier gauss) {
        return wave.with(variants.apply(change(corners, most, gauss)));
    }

    private HarmonicFit.Change change(Corners corners, int most, DoubleSupplier gauss) {
        return (k, cosine, sine) -> {
            double variance = wave.quadratureVariance(Math.min(k, wave.count()));
            if (k > most || !FittedWave.standsOut(Math.hypot(cosine, sine), variance)) {
                return new double[] {cosine, sine};
            }
            Complex factor = corners.undelayed(k);
            Complex noise = new Complex(gauss.getAsDouble(), gauss.getAsDouble()).multiply(Math.sqrt(variance));
            Complex harmonic =
                    new Complex(cosine, -sine).multiply(factor).add(noise.multiply(factor.subtract(Complex.ONE)));
            return new double[] {harmonic.getReal(), -harmonic.getImaginary()};
        };
    }
}
