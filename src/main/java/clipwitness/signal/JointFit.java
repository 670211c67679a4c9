package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.ArrayList;
import java.util.List;

/**
 * Least-squares fit of mean, harmonics and one common frequency to one or more channels of a record. With one harmonic and one channel
 * it is the four-parameter sine fit of IEEE Std 1057. The frequency takes Gauss-Newton steps, lengthened by the secant of the last two, each channel weighted with its
 * own residual variance, until a step is under a millionth of the frequency's standard uncertainty, or turns the record by less than
 * 1e-11 of a cycle from end to end, as rounding does where there is no noise. A short record may not tell so many harmonics from another
 * frequency: the fit then strays by more than half a cycle over the record, or to less than one cycle of it, and ends there.
 *
 * @param cyclesPerSample     fundamental frequency over the sample rate
 * @param standardUncertainty of that, from the residuals
 * @param channels            one fit a channel, in the order given
 * @param strayed             whether the frequency did not settle near its start: the figures of the fit are then none
 */
public record JointFit(
        double cyclesPerSample, double standardUncertainty, List<HarmonicFit> channels, boolean strayed) {
    private static final double FARTHEST_CYCLES = 0.5;
    private static final int MOST_STEPS = 40;
    private static final double SMALL_STEP = 1e-6;
    private static final double ROUNDING = 1e-11;
    private static final double LARGEST_STEP = Math.PI / 4;

    /** Copies the list. */
    public JointFit {
        channels = List.copyOf(channels);
    }

    /**
     * Fits from a starting frequency.
     *
     * @param channels        channels of one record, more samples with a value than parameters
     * @param cyclesPerSample starting frequency over the sample rate, within a third of a cycle over the whole record
     * @param harmonics       number of harmonics, 1 or more; harmonics x frequency below half the sample rate
     * @throws IllegalArgumentException if the record has too few samples for so many harmonics
     */
    public static JointFit of(List<Samples> channels, double cyclesPerSample, int harmonics) {
        return ofSeries(channels.stream().map(FitSamples::of).toList(), cyclesPerSample, harmonics);
    }

    /** The fit at one frequency that is not moved; parameters as of {@link #of}. */
    public static JointFit at(List<Samples> channels, double cyclesPerSample, int harmonics) {
        List<FitSamples> series = channels.stream().map(FitSamples::of).toList();
        return Step.at(series, cyclesPerSample, harmonics).result(series, cyclesPerSample, harmonics, false);
    }

    static JointFit ofSeries(List<FitSamples> channels, double start, int harmonics) {
        for (FitSamples s : channels) {
            if (s.count() <= 2 * harmonics + 2) {
                throw new IllegalArgumentException(harmonics + " harmonics do not fit " + s.count() + " samples");
            }
        }
        double cyclesPerSample = start;
        Step last = null;
        double lastCyclesPerSample = 0;
        for (int step = 0; ; step++) {
            Step found = Step.at(channels, cyclesPerSample, harmonics);
            boolean settled = Math.abs(found.change) <= SMALL_STEP * found.uncertainty
                    || Math.abs(found.change) * channels.get(0).size() <= ROUNDING;
            double change =
                    last == null ? found.change : found.extrapolated(last, cyclesPerSample - lastCyclesPerSample);
            double next = cyclesPerSample + change;
            boolean strays =
                    harmonics > 1 && strays(start, next, channels.get(0).size()); // a sine alone is always told
            if (settled || strays || step == MOST_STEPS || !(next > 0 && next * harmonics < 0.5)) {
                return found.result(channels, cyclesPerSample, harmonics, strays && !settled);
            }
            last = found;
            lastCyclesPerSample = cyclesPerSample;
            cyclesPerSample = next;
        }
    }

    private static boolean strays(double start, double next, int size) {
        return Math.abs(next - start) * size > FARTHEST_CYCLES || (start * size >= 1 && next * size < 1);
    }

    /** The fits at one frequency, and the step of the frequency that they ask for. */
    private record Step(List<LinearFit> fits, double change, double uncertainty, List<Double> phaseVariances) {
        static Step at(List<FitSamples> channels, double cyclesPerSample, int harmonics) {
            List<LinearFit> fits = new ArrayList<>();
            List<Double> variances = new ArrayList<>();
            double slope = 0;
            double curvature = 0;
            FitSamples first = channels.get(0);
            Basis basis = new Basis(first, cyclesPerSample, harmonics);
            for (FitSamples s : channels) {
                LinearFit fit = s.hasGapsOf(first)
                        ? new LinearFit(s, cyclesPerSample, harmonics, basis)
                        : new LinearFit(s, cyclesPerSample, harmonics);
                double floor = Double.MIN_NORMAL + 1e-30 * s.energyAbout(0);
                double variance = Math.max(floor, fit.residualEnergy()) / (s.count() - 2 * harmonics - 2);
                slope += fit.slope() / variance;
                curvature += fit.curvature() / variance;
                fits.add(fit);
                variances.add(variance);
            }
            double perPhase = 1 / (2 * Math.PI * channels.get(0).size());
            double change = curvature > 0 ? Math.max(-LARGEST_STEP, Math.min(LARGEST_STEP, slope / curvature)) : 0;
            double phaseVariance = curvature > 0 ? 1 / curvature : 0;
            return new Step(
                    fits,
                    change * perPhase,
                    Math.sqrt(phaseVariance) * perPhase,
                    variances.stream().map(v -> phaseVariance / v).toList());
        }

        /** Gauss-Newton's step, or the secant through its last two where that shortens it. */
        double extrapolated(Step last, double moved) {
            double bend = last.change - change;
            double secant = moved * change / bend;
            return Math.abs(secant - change) < Math.abs(change) / 2 ? secant : change;
        }

        JointFit result(List<FitSamples> channels, double cyclesPerSample, int harmonics, boolean strayed) {
            List<HarmonicFit> results = new ArrayList<>();
            for (int i = 0; i < fits.size(); i++) {
                results.add(new HarmonicFit(
                        fits.get(i), cyclesPerSample, channels.get(i).size(), phaseVariances.get(i), harmonics));
            }
            return new JointFit(cyclesPerSample, uncertainty, results, strayed);
        }
    }
}
