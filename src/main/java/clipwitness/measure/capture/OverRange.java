package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalScale;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a record reached the end of the converter: a run of at least five samples on its extreme code, repeated in most periods,
 * where that code is the end of a range that is known from the vertical scale or inferred from the span of codes; or on one side only,
 * at a whole number of divisions or at the last code of a converter centred on zero, where noise of 0.3 code or more elsewhere vanishes. Where the file
 * itself states full scale, as a sound file does, that alone decides.
 */
final class OverRange {
    private static final int SHORTEST_RUN = 5;
    private static final double DITHERED = 0.3;
    private static final double MOST_OF_THE_SPAN = 0.94;
    private static final int NEAR_THE_END = 4;

    /** An analogue input stage limits a little before its converter ends: within 0.1 dB of full scale. */
    static final double END_OF_SCALE = 0.9886;

    private static final int FEWEST_BITS = 8;
    private static final int MOST_BITS = 16;

    private final Samples samples;
    private final double step;
    private final Optional<VerticalScale> scale;
    private final double lowest;
    private final double highest;

    private OverRange(Samples samples, double step, Optional<VerticalScale> scale) {
        this.samples = samples;
        this.step = step;
        this.scale = scale;
        lowest = samples.minimum();
        highest = samples.maximum();
    }

    /**
     * What tells that the record was over-range, or nothing.
     *
     * @param step    converter step, V
     * @param period  samples a period
     * @param scatter scatter about the mean cycle, V
     */
    static Optional<Reason> evidence(
            Samples samples, double step, double period, double scatter, Optional<VerticalScale> scale) {
        OverRange test = new OverRange(samples, step, scale);
        return test.atEnd(1, period, scatter).or(() -> test.atEnd(-1, period, scatter));
    }

    private Optional<Reason> atEnd(int sign, double period, double scatter) {
        double extreme = sign > 0 ? highest : lowest;
        Runs runs = Runs.on(samples, extreme, step, SHORTEST_RUN);
        double periods = samples.size() / period;
        if (runs.periodsWithRun(period) <= periods / 2) {
            return Optional.empty();
        }
        Word side = sign > 0 ? Word.UPPER_HALF : Word.LOWER_HALF;
        OptionalDouble end = scale.map(VerticalScale::fullScale).orElse(OptionalDouble.empty());
        if (end.isPresent()) {
            return Math.abs(extreme) >= END_OF_SCALE * end.getAsDouble()
                    ? Optional.of(runsOf(runs, side, DoubtReason.OVER_RANGE))
                    : Optional.empty();
        }
        if (fillsConverter((highest - lowest) / step) || isScreenEnd(extreme)) {
            return Optional.of(runsOf(runs, side, DoubtReason.OVER_RANGE));
        }
        boolean silent = scatter >= DITHERED * step && runs.noiseVanishes();
        if (silent && (isWholeDivisions(extreme) || isLastCode(extreme))) {
            return Optional.of(runsOf(runs, side, DoubtReason.OVER_RANGE_SILENT));
        }
        return Optional.empty();
    }

    private static Reason runsOf(Runs runs, Word side, DoubtReason doubt) {
        return Reason.of(doubt, Argument.count(runs.longest()), Argument.word(side));
    }

    /** Whether a span of so many codes is that of a converter of 8 to 16 bit. */
    static boolean fillsConverter(double span) {
        for (int bits = FEWEST_BITS; bits <= MOST_BITS; bits++) {
            double full = Math.pow(2, bits) - 1;
            if (span <= full + NEAR_THE_END && (span >= full - NEAR_THE_END || span >= MOST_OF_THE_SPAN * full)) {
                return true;
            }
        }
        return false;
    }

    private boolean isScreenEnd(double extreme) {
        if (scale.isEmpty() || scale.get().offset().isEmpty()) {
            return false;
        }
        double codes = Math.abs(extreme - scale.get().offset().getAsDouble()) / step;
        for (int bits = FEWEST_BITS; bits <= MOST_BITS; bits++) {
            double half = Math.pow(2, bits - 1);
            double divisions = half * step / scale.get().perDivision();
            if (Math.abs(codes - half) <= NEAR_THE_END && divisions > 3.9 && divisions < 5.2) {
                return true;
            }
        }
        return false;
    }

    private boolean isWholeDivisions(double extreme) {
        if (scale.isEmpty()) {
            return false;
        }
        double divisions =
                (extreme - scale.get().offset().orElse(0)) / scale.get().perDivision();
        return Math.abs(divisions - Math.rint(divisions)) * scale.get().perDivision() <= 1.5 * step
                && Math.abs(divisions) > 0.5;
    }

    private boolean isLastCode(double extreme) {
        double code = Math.abs(extreme / step);
        for (int bits = FEWEST_BITS; bits <= MOST_BITS; bits++) {
            double half = Math.pow(2, bits - 1);
            if (code > half - 1.5 && code < half + 0.5) {
                return true;
            }
        }
        return false;
    }
}
