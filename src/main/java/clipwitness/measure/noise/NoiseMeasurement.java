package clipwitness.measure.noise;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.capture.VerticalScale;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.signal.CodeStep;
import clipwitness.signal.UsableBand;
import clipwitness.signal.WelchDensity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** From a record to its noise and hum. */
public final class NoiseMeasurement {
    /** Periods of the mains that hum needs, and every segment has where the record allows it. */
    public static final double PERIODS_FOR_HUM = 5;

    /** Where the sheet is silent: the two frequencies in use, Hz. */
    private static final List<Double> USUAL_MAINS = List.of(50.0, 60.0);

    /** Audible band, Hz. */
    private static final Band AUDIBLE = new Band(20, 20_000);

    private static final double LONGEST_SEGMENT = 1; // s
    private static final int SEGMENTS = 4; // of a record, before they overlap
    private static final int FEWEST_SAMPLES = 32;
    private static final double MOST_GAPS = 0.01;

    private final NoiseInput input;
    private final Samples samples;
    private final double rate;
    private final List<Double> mains;
    private final List<Doubt> doubts = new ArrayList<>();

    private NoiseMeasurement(NoiseInput input) {
        this.input = input;
        this.samples = input.output().samples();
        this.rate = input.output().sampleRate();
        this.mains = input.mains().isPresent() ? List.of(input.mains().getAsDouble()) : USUAL_MAINS;
    }

    /** Noise and hum; refused where the record is constant, has too many gaps, was over-range or is shorter than a period of the mains. */
    public static NoiseResult of(NoiseInput input) {
        return new NoiseMeasurement(input).measured();
    }

    /** A result without figures. */
    public static NoiseResult refused(NoiseInput input, Reason reason) {
        return new NoiseMeasurement(input).refused(reason);
    }

    private NoiseResult measured() {
        NoiseDoubts.missingSamples(samples).ifPresent(doubts::add);
        OptionalDouble step = samples.gaps() < samples.size() ? CodeStep.of(samples) : OptionalDouble.empty();
        NoiseDoubts.overRange(samples, step).ifPresent(doubts::add);
        if (lasts() * mains.get(0) < PERIODS_FOR_HUM) {
            doubts.add(NoiseDoubts.tooShort(lasts(), mains.get(0)));
        }
        return unfit().map(this::refused).orElseGet(() -> figures(step));
    }

    private double lasts() {
        return samples.size() / rate;
    }

    private Optional<Reason> unfit() {
        if (samples.gaps() > MOST_GAPS * samples.size() || doubts.stream().anyMatch(Doubt::refuses)) {
            return Optional.of(Reason.of(FigureReason.CAPTURE_NOT_MEASURED));
        }
        if (lasts() * mains.get(0) < 1 || samples.size() < FEWEST_SAMPLES) {
            return Optional.of(Reason.of(FigureReason.RECORD_TOO_SHORT));
        }
        return samples.maximum() > samples.minimum()
                ? Optional.empty()
                : Optional.of(Reason.of(FigureReason.RECORD_CONSTANT));
    }

    private NoiseResult figures(OptionalDouble step) {
        Samples whole = Gaps.filled(samples);
        List<FittedHum> hums = mains.stream().map(m -> hum(whole, m)).toList();
        FittedHum strongest = hums.stream()
                .max(Comparator.comparingDouble(h -> h.hum().power()))
                .orElseThrow();
        int length = segment();
        WelchDensity density = WelchDensity.of(whole, length);
        WelchDensity rest = strongest.wave().isEmpty() ? density : WelchDensity.of(strongest.rest(whole), length);
        NoiseSpectrum spectrum = new NoiseSpectrum(
                density, rest, strongest.tones(), rate, input.output().unit(), step);
        Band band = new Band(
                Math.max(AUDIBLE.low(), rate / length),
                Math.min(AUDIBLE.high(), UsableBand.HIGHEST_OVER_SAMPLE_RATE * rate));
        Map<NoiseFigure, Measured> values = new EnumMap<>(NoiseFigure.class);
        for (NoiseFigure f : NoiseFigure.values()) {
            values.put(f, absolute(spectrum.of(f, band)));
        }
        return new NoiseResult(
                Optional.of(band),
                Optional.of(spectrum),
                values,
                hums.stream().map(h -> absolute(h.hum())).toList(),
                spectrum.floor(NoiseFigure.RMS, band),
                range(step),
                lasts(),
                doubts);
    }

    /** A quarter of the record, but at least five periods of the mains and at most a second; half of a record that is shorter than that allows. */
    private int segment() {
        double wanted = Math.min(
                LONGEST_SEGMENT * rate,
                Math.max(PERIODS_FOR_HUM / mains.get(0) * rate, (double) samples.size() / SEGMENTS));
        return (int) Math.min(samples.size() / 2.0, wanted);
    }

    private FittedHum hum(Samples whole, double nominal) {
        Unit unit = input.output().unit();
        return lasts() * nominal < PERIODS_FOR_HUM
                ? HumFit.refused(
                        rate,
                        unit,
                        nominal,
                        NoiseDoubts.tooShort(lasts(), nominal).reason())
                : HumFit.of(whole, rate, unit, nominal);
    }

    private MainsHum absolute(MainsHum hum) {
        return new MainsHum(
                hum.nominal(),
                hum.mains(),
                hum.lines().stream().map(l -> l.with(absolute(l.level()))).toList());
    }

    private Measured absolute(Measured figure) {
        return figure.asValue()
                .map(v -> (Measured)
                        v.plus(Source.VERTICAL_ACCURACY, v.number() * input.verticalAccuracy() / Math.sqrt(3)))
                .orElse(figure);
    }

    private VerticalRange range(OptionalDouble step) {
        OptionalDouble division = input.scale()
                .map(VerticalScale::perDivision)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        return new VerticalRange(division, step);
    }

    private NoiseResult refused(Reason reason) {
        Unit unit = input.output().unit();
        Map<NoiseFigure, Measured> values = new EnumMap<>(NoiseFigure.class);
        for (NoiseFigure f : NoiseFigure.values()) {
            values.put(f, Measured.refused(unit, reason));
        }
        Reason ofLines = doubts.stream()
                .filter(d -> d.code() == DoubtCode.TOO_SHORT_FOR_HUM)
                .findFirst()
                .map(Doubt::reason)
                .orElse(reason);
        return new NoiseResult(
                Optional.empty(),
                Optional.empty(),
                values,
                mains.stream()
                        .map(m -> HumFit.refused(rate, unit, m, ofLines).hum())
                        .toList(),
                OptionalDouble.empty(),
                range(OptionalDouble.empty()),
                lasts(),
                doubts);
    }
}
