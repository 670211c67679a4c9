package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.signal.PolynomialFit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The line of small signals: a cubic by least squares through the transfer curve over 0.75 of the smaller onset to both sides of the
 * input's mean, repeated until it no longer changes; the first window is 15 % of the input's amplitude. Far above its onset a unit is
 * straight over so short a part of the input that too few samples lie there: then there is no line.
 *
 * @param line      the straight part
 * @param onsetUp   onset on the side where the output goes up, where reached
 * @param onsetDown onset on the other side, where reached
 */
record SmallSignal(SmallSignalLine line, Optional<OnsetPoint> onsetUp, Optional<OnsetPoint> onsetDown) {
    private static final double FIRST_WINDOW = 0.15;
    private static final double SHARE_OF_ONSET = 0.75;
    private static final double FEWEST_CODES = 5;

    /** Share of the input's amplitude over which its codes are counted at least: the fitted input is known between them, from all of the record. */
    private static final double LEAST_COUNTED = 0.05;

    private static final int FEWEST_POINTS = 8;
    private static final int MOST_ROUNDS = 25;
    private static final int ROUNDS_AT_FULL_STEP = 10;
    private static final double STANDS = 0.002;
    private static final double WIDER = 1.2;
    private static final double MOST_FEEDBACK = 0.5;

    /** The line, or why there is none. */
    sealed interface Answer {
        /** The line. */
        record Found(SmallSignal line) implements Answer {}

        /** Why there is none. */
        record Unknown(FigureReason why) implements Answer {}

        /** The line, where there is one. */
        default Optional<SmallSignal> found() {
            return this instanceof Found f ? Optional.of(f.line) : Optional.empty();
        }
    }

    /**
     * The line of a curve.
     *
     * @param mirrored the same curve seen from the other end
     */
    static Answer of(Transfer transfer, Transfer mirrored, OptionalDouble inputStep) {
        double window = FIRST_WINDOW * transfer.amplitude();
        if (holdsFew(window, inputStep)) {
            return new Answer.Unknown(FigureReason.FEW_INPUT_CODES);
        }
        OutputProfile up = new OutputProfile(transfer);
        OutputProfile down = new OutputProfile(mirrored);
        for (int round = 0; ; round++) {
            if (!transfer.points().holds(FEWEST_POINTS, -window, window)) {
                return new Answer.Unknown(FigureReason.FEW_STRAIGHT_SAMPLES);
            }
            SmallSignal found = over(window, up, down);
            if (found.line().slope() <= 0) {
                return new Answer.Unknown(FigureReason.OUTPUT_NOT_RISING);
            }
            double next = found.next(transfer);
            if (Math.abs(next - window) < STANDS * window || round == MOST_ROUNDS) {
                return holdsFew(Math.max(window, LEAST_COUNTED * transfer.amplitude()), inputStep)
                        ? new Answer.Unknown(FigureReason.FEW_INPUT_CODES)
                        : new Answer.Found(found.fedBack(window, up, down));
            }
            window = round < ROUNDS_AT_FULL_STEP ? next : (next + window) / 2;
        }
    }

    private static boolean holdsFew(double window, OptionalDouble inputStep) {
        return inputStep.isPresent() && 2 * window / inputStep.getAsDouble() < FEWEST_CODES;
    }

    private static SmallSignal over(double window, OutputProfile up, OutputProfile down) {
        SmallSignalLine line = line(up.transfer(), window);
        return new SmallSignal(line, OnsetPoint.of(up, line), OnsetPoint.of(down, line.mirrored()));
    }

    /** The window that these onsets ask for. */
    private double next(Transfer transfer) {
        return SHARE_OF_ONSET * smallerOnset(transfer);
    }

    /**
     * An onset that noise moves moves the window with it, which moves the onset again, by a share g: all in all by 1 / (1 - g). The share is
     * taken from a wider and a narrower window.
     */
    private SmallSignal fedBack(double window, OutputProfile up, OutputProfile down) {
        double wide = window * WIDER;
        double narrow =
                up.transfer().points().holds(FEWEST_POINTS, -window / WIDER, window / WIDER) ? window / WIDER : window;
        double asked = over(wide, up, down).next(up.transfer())
                - over(narrow, up, down).next(up.transfer());
        double share = Math.max(0, Math.min(asked / (wide - narrow), MOST_FEEDBACK));
        return new SmallSignal(
                line, onsetUp.map(o -> o.wider(1 / (1 - share))), onsetDown.map(o -> o.wider(1 / (1 - share))));
    }

    /** The smaller onset, or the amplitude of the input where neither is reached, V. */
    double smallerOnset(Transfer transfer) {
        double up = onsetUp.map(OnsetPoint::input).orElse(transfer.amplitude());
        double down = onsetDown.map(OnsetPoint::input).orElse(transfer.amplitude());
        return Math.min(up, down);
    }

    /** A corner inside the least window moves the cubic. Steps that no noise dithers may lift one end of the window against the other by their own errors. */
    private static SmallSignalLine line(Transfer transfer, double window) {
        PolynomialFit cubic = PolynomialFit.between(transfer.points(), -window, window, 3);
        double scatter = cubic.scatter(transfer.scatter());
        return new SmallSignalLine(
                cubic.slopeAt(0),
                Math.hypot(scatter * Math.sqrt(cubic.slopeVarianceAt(0)), transfer.undithered() / window),
                cubic.at(0),
                scatter * Math.sqrt(cubic.varianceAt(0)),
                window);
    }

    /** The slope as gain in dB. */
    Measured gain(double relativeInputUncertainty) {
        return Measured.withNoise(
                Decibels.ofAmplitude(line.slope()),
                Unit.DECIBEL,
                Decibels.PER_RELATIVE_AMPLITUDE
                        * Math.hypot(line.slopeUncertainty() / line.slope(), relativeInputUncertainty));
    }
}
