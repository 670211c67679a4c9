package clipwitness.compare.judge;

import clipwitness.capture.VerticalRange;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.OptionalDouble;

/** Whether a wave would still fit a finer vertical range of the instrument; ranges follow in steps of 1, 2 and 5. */
public final class FinerRange {
    /** Bits of the converter of an ordinary oscilloscope, where the sheet states none. */
    public static final int USUAL_BITS = 8;

    private static final double ROOM = 0.95; // what noise and a careful hand at the position knob need
    private static final double FROM_FIVE_TO_TWO = 2.5;
    private static final double TO_HALF = 2;

    private FinerRange() {}

    /** Share of the converter's codes that a wave uses; empty where the step was not found, or the wave not measured. */
    public static OptionalDouble used(WaveformResult wave, int bits) {
        OptionalDouble step = wave.range().codeStep();
        double span = peak(wave, WaveformQuantity.PEAK_UP) + peak(wave, WaveformQuantity.PEAK_DOWN);
        return step.isPresent() && span > 0
                ? OptionalDouble.of(span / step.getAsDouble() / Math.pow(2, bits))
                : OptionalDouble.empty();
    }

    /** Whether a range so many times finer holds the wave; one of which nothing is known may. */
    static boolean holds(WaveformResult wave, int bits, double times) {
        return used(wave, bits).orElse(0) * times <= ROOM;
    }

    /** Whether the next finer range holds the wave. */
    public static boolean nextHolds(WaveformResult wave, int bits) {
        return holds(wave, bits, next(wave.range()));
    }

    /** How many times finer the next range is. */
    private static double next(VerticalRange range) {
        if (range.perDivision().isEmpty()) {
            return FROM_FIVE_TO_TWO;
        }
        double volts = range.perDivision().getAsDouble();
        double first = volts / Math.pow(10, Math.floor(Math.log10(volts)));
        return Math.abs(first - 1) < 0.1 || Math.abs(first - 2) < 0.1 || first > 9.9 ? TO_HALF : FROM_FIVE_TO_TWO;
    }

    private static double peak(WaveformResult wave, WaveformQuantity quantity) {
        return wave.get(quantity).asValue().map(Measured.Value::number).orElse(0.0);
    }
}
