package clipwitness.measure.transfer;

import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.WeightedPoints;

/**
 * Output against input: single points from all periods, for the fits.
 *
 * @param points    input from its mean and output of all samples, V
 * @param noise     of the output
 * @param amplitude amplitude of the input, V
 * @param stretches stretches of the points
 */
record Transfer(WeightedPoints points, CurveNoise noise, double amplitude, Stretches stretches) {
    /** One of several outputs over the same inputs. */
    static Transfer of(FittedWave output, InputPlaces inputs) {
        WeightedPoints points = inputs.over(output.cycle().points());
        CurveNoise noise = new CurveNoise(Math.hypot(output.scatter(), output.undithered()), output.undithered());
        return new Transfer(points, noise, inputs.aligned().amplitude(), inputs.stretches(points, noise));
    }

    /** The curve seen from the other end, so that its lower half becomes the upper one. */
    Transfer mirrored() {
        return new Transfer(points.mirrored(), noise, amplitude, stretches.mirrored());
    }

    /** Scatter of one sample of the output, V: {@link CurveNoise#scatter}. */
    double scatter() {
        return noise.scatter();
    }

    /** What the converter step adds to one value, V: {@link CurveNoise#undithered}. */
    double undithered() {
        return noise.undithered();
    }
}
