package clipwitness.signal;

import java.util.ArrayList;
import java.util.List;

/**
 * The harmonics of a cycle at its folded samples, for many changes of one wave: each cosine and sine is worked out once. Not for several threads at a
 * time.
 */
final class PointHarmonics {
    private final WeightedPoints points;
    private final List<double[]> cosines = new ArrayList<>();
    private final List<double[]> sines = new ArrayList<>();

    /**
     * The fundamental; the others are worked out when they are first asked for.
     *
     * @param points folded samples over the phase from the beginning of the cycle
     * @param origin that beginning, in cycles from the middle of the record
     */
    PointHarmonics(WeightedPoints points, double origin) {
        this.points = points;
        double[] cosine = new double[points.size()];
        double[] sine = new double[points.size()];
        for (int i = 0; i < cosine.length; i++) {
            double angle = 2 * Math.PI * (points.x(i) + origin);
            cosine[i] = Math.cos(angle);
            sine[i] = Math.sin(angle);
        }
        cosines.add(cosine);
        sines.add(sine);
    }

    private void addNext() {
        double[] cosine = new double[points.size()];
        double[] sine = new double[points.size()];
        double[] lastCosine = cosines.get(cosines.size() - 1);
        double[] lastSine = sines.get(sines.size() - 1);
        double[] turnCosine = cosines.get(0);
        double[] turnSine = sines.get(0);
        for (int i = 0; i < cosine.length; i++) {
            cosine[i] = lastCosine[i] * turnCosine[i] - lastSine[i] * turnSine[i];
            sine[i] = lastSine[i] * turnCosine[i] + lastCosine[i] * turnSine[i];
        }
        cosines.add(cosine);
        sines.add(sine);
    }

    /** The points with a fit of the same frequency added. */
    WeightedPoints plus(HarmonicFit change) {
        double[] sum = new double[points.size()];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = points.y(i) + change.mean();
        }
        for (int k = 1; k <= change.count(); k++) {
            if (k > cosines.size()) {
                addNext();
            }
            if (change.cosine(k) != 0 || change.sine(k) != 0) {
                add(sum, change.cosine(k), cosines.get(k - 1), change.sine(k), sines.get(k - 1));
            }
        }
        return points.withOrdinates(sum);
    }

    private static void add(double[] sum, double cosine, double[] cosines, double sine, double[] sines) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += cosine * cosines[i] + sine * sines[i];
        }
    }
}
