package clipwitness.measure.transfer;

import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.WeightedPoints;

/**
 * Output against input: single points from all periods, for the fits.
 *
 * @param points    input from its mean and output of all samples, V
 * @param scatter   scatter of one sample of the output, V; with that share of the converter step
 * @param undithered what the converter step adds to one value where noise does not dither it, V
 * @param amplitude amplitude of the input, V
 * @param stretches stretches of the points
 */
record Transfer(WeightedPoints points, double scatter, double undithered, double amplitude, Stretches stretches) {
    /** One of several outputs over the same inputs. */
    static Transfer of(FittedWave output, InputPlaces inputs) {
        WeightedPoints points = inputs.over(output.cycle().points());
        return new Transfer(
                points,
                Math.hypot(output.scatter(), output.undithered()),
                output.undithered(),
                inputs.aligned().amplitude(),
                inputs.stretches(points));
    }

    /** The curve seen from the other end, so that its lower half becomes the upper one. */
    Transfer mirrored() {
        return new Transfer(points.mirrored(), scatter, undithered, amplitude, stretches.mirrored());
    }
}
