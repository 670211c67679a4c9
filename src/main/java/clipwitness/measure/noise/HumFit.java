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
            lines.add(new HumLine(k, k * nominal, 0, 0, Measured.refused(unit, reason)));
        }
        return new FittedHum(new MainsHum(nominal, Optional.empty(), lines), Optional.empty(), sampleRate);
    }

    private FittedHum lines() {
        Reason hidden = Reason.of(FigureReason.LINE_HIDDEN);
        OptionalDouble start =
                orders == 0 ? OptionalDouble.empty() : MainsSearch.of(samples, nominal / sampleRate, orders);
        if (start.isEmpty()) {
            return refused(hidden);
        }
        JointFit fit = JointFit.of(List.of(samples), start.getAsDouble(), orders);
        double found = fit.cyclesPerSample() * sampleRate;
        if (!(Math.abs(found / nominal - 1) <= WITHIN)) {
            return refused(hidden);
        }
        FittedWave wave = FittedWave.of(samples, fit.channels().get(0), 0);
        List<HumLine> lines = new ArrayList<>();
        for (int k = 1; k <= orders; k++) {
            lines.add(line(k, wave.harmonicPower(k), hidden));
        }
        Measured.Value mains = Measured.withNoise(found, Unit.HERTZ, fit.standardUncertainty() * sampleRate);
        return new FittedHum(new MainsHum(nominal, Optional.of(mains), lines), Optional.of(wave), sampleRate);
    }

    /** A line of peak amplitude A has the mean square A² / 2. */
    private HumLine line(int order, NoisyPower square, Reason hidden) {
        double amplitude = square.amplitude();
        double uncertainty = square.expandedAmplitude() / 2;
        Measured level = amplitude > STANDS_OUT * uncertainty
                ? Measured.withNoise(amplitude / Math.sqrt(2), unit, uncertainty / Math.sqrt(2))
                : Measured.refused(unit, hidden);
        return new HumLine(order, order * nominal, square.power() / 2, square.variance() / 4, level);
    }
}
