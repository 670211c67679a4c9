package clipwitness.measure.noise;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.signal.JointFit;
import clipwitness.signal.MainsSearch;
import clipwitness.signal.UsableBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The lines at 1 to 10 times the mains: one least-squares fit, its frequency refined within 1 % of the nominal one. The noise of each line is the density of what
 * the fit leaves beside it.
 */
final class HumFit {
    private static final int MOST_LINES = 10;
    private static final double WITHIN = 0.01;
    private static final double STANDS_OUT = 3;

    private final Samples samples;
    private final double sampleRate;
    private final Unit unit;
    private final double nominal;
    private final int orders;

    private HumFit(Samples samples, double sampleRate, Unit unit, double nominal) {
        this.samples = samples;
        this.sampleRate = sampleRate;
        this.unit = unit;
        this.nominal = nominal;
        this.orders = (int) Math.min(MOST_LINES, UsableBand.HIGHEST_OVER_SAMPLE_RATE * sampleRate / nominal);
    }

    /**
     * The lines of one nominal frequency.
     *
     * @param samples    five periods of the mains or more, without gaps
     * @param sampleRate Hz
     * @param nominal    Hz
     */
    static FittedHum of(Samples samples, double sampleRate, Unit unit, double nominal) {
        return new HumFit(samples, sampleRate, unit, nominal).lines();
    }

    /** Lines of which nothing is known. */
    static FittedHum refused(double sampleRate, Unit unit, double nominal, Reason reason) {
        return new HumFit(Samples.of(), sampleRate, unit, nominal).refused(reason);
    }

    private FittedHum refused(Reason reason) {
        List<HumLine> lines = new ArrayList<>();
        for (int k = 1; k <= orders; k++) {
            lines.add(new HumLine(k, k * nominal, NoisyPower.ZERO, Measured.refused(unit, reason)));
        }
        return new FittedHum(new MainsHum(nominal, Optional.empty(), lines), Optional.empty(), sampleRate);
    }

    private FittedHum lines() {
        if (orders == 0) {
            return refused(Reason.of(FigureReason.LINE_HIDDEN));
        }
        OptionalDouble start = MainsSearch.of(samples, nominal / sampleRate, orders);
        if (start.isPresent()) {
            JointFit fit = JointFit.of(List.of(samples), start.getAsDouble(), orders);
            double found = fit.cyclesPerSample() * sampleRate;
            if (Math.abs(found / nominal - 1) <= WITHIN) {
                double uncertainty = fit.standardUncertainty() * sampleRate;
                return found(wave(fit), Measured.withNoise(found, Unit.HERTZ, uncertainty));
            }
        }
        FittedWave wave = wave(JointFit.at(List.of(samples), nominal / sampleRate, orders));
        return new FittedHum(new MainsHum(nominal, Optional.empty(), lines(wave, false)), Optional.empty(), sampleRate);
    }

    private FittedWave wave(JointFit fit) {
        return FittedWave.of(samples, fit.channels().get(0), 0);
    }

    private FittedHum found(FittedWave wave, Measured.Value mains) {
        return new FittedHum(
                new MainsHum(nominal, Optional.of(mains), lines(wave, true)), Optional.of(wave), sampleRate);
    }

    private List<HumLine> lines(FittedWave wave, boolean found) {
        List<HumLine> lines = new ArrayList<>();
        for (int k = 1; k <= orders; k++) {
            NoisyPower square = wave.harmonicPower(k);
            lines.add(new HumLine(k, k * nominal, square, level(square, found)));
        }
        return lines;
    }

    /** A line of peak amplitude a has the rms a / root 2; among lines none of which stands out, one that seems to is chance. */
    private Measured level(NoisyPower square, boolean found) {
        double uncertainty = square.expandedAmplitude() / 2;
        return found && square.amplitude() > STANDS_OUT * uncertainty
                ? Measured.withNoise(square.amplitude() / Math.sqrt(2), unit, uncertainty / Math.sqrt(2))
                : Measured.refused(unit, Reason.of(FigureReason.LINE_HIDDEN));
    }
}
