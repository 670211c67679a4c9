package clipwitness.measure.noise;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.signal.WelchDensity;
import java.util.List;
import java.util.OptionalDouble;

/** Power of a record over frequency, and the figures of bands of it. */
public final class NoiseSpectrum {
    /** A converter's step makes noise of step / root 12 (IEEE Std 1241), spread evenly up to half the sample rate. */
    private static final double OF_A_STEP = 1 / Math.sqrt(12);

    /** Below so many times the converter's own noise a figure says no more than that the noise lies below it (measurement book, section 8). */
    private static final double ABOVE_FLOOR = 3;

    private final WelchDensity density;
    private final WelchDensity rest;
    private final List<Tone> tones;
    private final double sampleRate;
    private final Unit unit;
    private final OptionalDouble step;

    /**
     * A spectrum.
     *
     * @param density    power a bin, the lines of the mains with it
     * @param rest       the same without them
     * @param tones      these lines
     * @param sampleRate Hz
     * @param unit       of the record
     * @param step       converter step, where the samples show one
     */
    NoiseSpectrum(
            WelchDensity density,
            WelchDensity rest,
            List<Tone> tones,
            double sampleRate,
            Unit unit,
            OptionalDouble step) {
        this.density = density;
        this.rest = rest;
        this.tones = List.copyOf(tones);
        this.sampleRate = sampleRate;
        this.unit = unit;
        this.step = step;
    }

    /** Number of points, the first at 0 Hz. */
    public int points() {
        return density.bins();
    }

    /** Distance of two points, Hz. */
    public double spacing() {
        return density.spacing() * sampleRate;
    }

    /** Density at a point, V/√Hz. */
    public double density(int point) {
        return Math.sqrt(density.power(point) / spacing());
    }

    /**
     * A figure over a band, V: root of the weighted sum of the bins and of the lines of the mains, which are known better from their fit. Its uncertainty is the scatter
     * of the bins from segment to segment, that of the lines, and what the converter's own noise adds to the figure, as a bound; under three times that noise the figure is an upper bound, and never below it: noise that moves no code does not show.
     */
    public Measured.Value of(NoiseFigure figure, Band band) {
        double[] weights = weights(figure, band);
        double floor = floor(figure, band).orElse(0);
        double power = Math.max(0, rest.power(weights));
        double variance = rest.variance(weights);
        for (Tone t : tones) {
            double weight = band.share(t.frequency(), 0) * figure.weight(t.frequency());
            power += weight * t.power();
            variance += weight * weight * t.variance();
        }
        double rms = Math.max(floor, Math.sqrt(power));
        double spread = rms > 0 ? Math.sqrt(variance) / (2 * rms) : 0;
        Measured.Value value = Measured.of(
                rms, unit, new Contribution(Source.NOISE, spread, Math.max(1, rest.degreesOfFreedom(weights))));
        double without = Math.sqrt(Math.max(0, rms * rms - floor * floor));
        value = floor > 0 ? value.plus(Source.CONVERTER_STEP, (rms - without) / Math.sqrt(3)) : value;
        return rms < ABOVE_FLOOR * floor ? value.asUpperBound() : value;
    }

    /** Noise of the converter's step alone in a band, V; empty where the samples show no step. */
    public OptionalDouble floor(NoiseFigure figure, Band band) {
        if (step.isEmpty()) {
            return OptionalDouble.empty();
        }
        double share = 0;
        for (double w : weights(figure, band)) {
            share += w * spacing() / (sampleRate / 2);
        }
        return OptionalDouble.of(step.getAsDouble() * OF_A_STEP * Math.sqrt(share));
    }

    /**
     * Weight of each bin. The window spreads each line over a few bins, where a steep weighting would count more of it than at the line:
     * half the weighting's curvature times the square of that width is taken off.
     */
    private double[] weights(NoiseFigure figure, Band band) {
        double[] weights = new double[density.bins()];
        double width = density.lineWidth() * sampleRate;
        for (int k = 0; k < weights.length; k++) {
            double f = k * spacing();
            double share = band.share(f, spacing());
            double middle = share > 0 ? figure.weight(f) : 0;
            double around = share > 0 ? (figure.weight(f + width) + figure.weight(f - width)) / 2 : 0;
            weights[k] = share * Math.max(0, 2 * middle - around);
        }
        return weights;
    }
}
