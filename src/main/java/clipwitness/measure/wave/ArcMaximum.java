package clipwitness.measure.wave;

import java.util.Arrays;
import java.util.Random;

/**
 * Height of an arc: the maximum of a polynomial through its points, less what noise lifts that maximum on average. The lift is found by a
 * parametric bootstrap (B. Efron, R. Tibshirani, An Introduction to the Bootstrap, 1993): seeded noise of the polynomial's coefficients is
 * added to what of the arc is not noise, a constant on a plateau, and the maxima are compared; their scatter is the standard uncertainty of
 * the height, and four fifths of the lift, for the arc it is taken from was itself bent by the noise: a share under which thousands of
 * records of sharp and of round waves hold the truth as often as they should.
 */
final class ArcMaximum {
    private static final int PLACES = 64;
    private static final int DRAWS = 256;
    private static final long SEED = 1;
    private static final double SHARE_OF_LIFT = 0.8;
    private static final double ROUNDED_UP = 1 + 1e-9;
    private static final int MOST_COEFFICIENTS = Arc.HIGHEST_DEGREE + Arc.SPARE_DEGREES + 1;

    /** The same normal deviates for every arc. */
    private static final double[] NORMAL = normal();

    private final double place;
    private final double height;
    private final double uncertainty;

    /**
     * Looks for the crest of an arc.
     *
     * @param sign    1 for an upper crest, -1 for a lower one
     * @param scatter standard deviation of one sample
     */
    ArcMaximum(Arc arc, int sign, double scatter) {
        double[] places = new double[PLACES + 1];
        double[] plain = new double[PLACES + 1];
        double share = arc.plainer().shareOf(arc.fit(), scatter);
        int top = 0;
        for (int i = 0; i <= PLACES; i++) {
            places[i] = arc.low() + (arc.high() - arc.low()) * i / PLACES;
            double value = arc.fit().at(places[i]);
            double plainer = arc.plainer().at(places[i]);
            plain[i] = sign * (plainer + share * (value - plainer));
            top = sign * value > sign * arc.fit().at(places[top]) ? i : top;
        }
        double[][] shares = arc.fit().noiseShares(places);
        double[] lengths = Arrays.stream(shares).mapToDouble(ArcMaximum::length).toArray();
        int count = shares[0].length;
        double highest = Arrays.stream(plain).max().orElseThrow();
        double sum = 0;
        double squares = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double lift = highest(plain, shares, lengths, noise(draw * count, count, scatter), top) - highest;
            sum += lift;
            squares += lift * lift;
        }
        double lift = sum / DRAWS;
        place = places[top];
        height = arc.fit().at(place) - sign * lift;
        double scatterOfHeight = Math.sqrt(Math.max(0, squares / DRAWS - lift * lift));
        uncertainty = Math.hypot(scatterOfHeight, SHARE_OF_LIFT * lift);
    }

    private static double[] normal() {
        Random random = new Random(SEED);
        double[] normal = new double[DRAWS * MOST_COEFFICIENTS];
        for (int i = 0; i < normal.length; i++) {
            normal[i] = random.nextGaussian();
        }
        return normal;
    }

    private static double[] noise(int first, int count, double scatter) {
        double[] noise = new double[count];
        for (int i = 0; i < count; i++) {
            noise[i] = scatter * NORMAL[first + i];
        }
        return noise;
    }

    private static double length(double[] vector) {
        double sum = 0;
        for (double v : vector) {
            sum += v * v;
        }
        return Math.sqrt(sum);
    }

    /** Places that this noise cannot lift above the highest one so far are passed over: it lifts none by more than the product of the lengths. */
    private static double highest(double[] plain, double[][] shares, double[] lengths, double[] noise, int first) {
        double highest = lifted(plain[first], shares[first], noise);
        double most = length(noise) * ROUNDED_UP;
        for (int i = 0; i < plain.length; i++) {
            if (plain[i] + most * lengths[i] > highest) {
                highest = Math.max(highest, lifted(plain[i], shares[i], noise));
            }
        }
        return highest;
    }

    private static double lifted(double plain, double[] shares, double[] noise) {
        double value = plain;
        for (int j = 0; j < noise.length; j++) {
            value += shares[j] * noise[j];
        }
        return value;
    }

    /** Where the crest is highest. */
    double place() {
        return place;
    }

    /** How high it is. */
    double height() {
        return height;
    }

    /** Standard uncertainty of the height. */
    double uncertainty() {
        return uncertainty;
    }
}
