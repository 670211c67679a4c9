package clipwitness.measure.series;

import clipwitness.measure.TransferCurve;
import clipwitness.quantity.Decibels;
import java.util.Arrays;

/**
 * How the level of an output follows the drive of a sine, from its transfer curve: the rms of f(a sin) about its mean, f the curve and a the
 * peak of the input. 1 dB a dB where the curve is straight, next to none for a wave clipped hard.
 */
public final class LevelOverDrive {
    private static final int PLACES = 720;

    private final double[] input;
    private final double[] output;

    private LevelOverDrive(TransferCurve curve) {
        this.input = curve.input().toArray();
        this.output = curve.output().toArray();
    }

    /**
     * Change of level in dB when the drive falls from one peak to a lower one.
     *
     * @param curve transfer curve
     * @param from  peak of the input, V, within the curve
     * @param to    lower peak, V, above 0
     * @return 0 or less for a curve that rises
     */
    public static double change(TransferCurve curve, double from, double to) {
        if (!(to > 0 && from >= to)) {
            throw new IllegalArgumentException("the drive must fall to a peak above 0 but goes " + from + " to " + to);
        }
        LevelOverDrive level = new LevelOverDrive(curve);
        return Decibels.ofAmplitude(level.rms(to) / level.rms(from));
    }

    private double rms(double peak) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < PLACES; i++) {
            double y = at(peak * Math.sin(2 * Math.PI * (i + 0.5) / PLACES));
            sum += y / PLACES;
            squares += y * y / PLACES;
        }
        return Math.sqrt(squares - sum * sum);
    }

    private double at(double x) {
        int found = Arrays.binarySearch(input, x);
        int above = Math.min(Math.max(found >= 0 ? found : -found - 1, 1), input.length - 1);
        double width = input[above] - input[above - 1];
        double share = width > 0 ? Math.max(0, Math.min(1, (x - input[above - 1]) / width)) : 0;
        return output[above - 1] + share * (output[above] - output[above - 1]);
    }
}
