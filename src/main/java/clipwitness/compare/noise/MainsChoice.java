package clipwitness.compare.noise;

import clipwitness.compare.result.CaptureResult;
import clipwitness.measure.noise.MainsHum;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One mains frequency for all captures of a job: the sheet's, else of 50 and 60 Hz the one whose lines carry the most power in the capture with the most hum.
 * Where no line stands out of the noise anywhere nothing is assumed.
 */
public final class MainsChoice {
    private MainsChoice() {}

    /**
     * The captures with the lines of that mains alone.
     *
     * @param captures captures of a job
     * @param stated   frequency that the sheet states, Hz
     */
    public static List<CaptureResult> made(List<CaptureResult> captures, OptionalDouble stated) {
        Optional<MainsHum> loudest = captures.stream()
                .flatMap(c -> c.noise().stream())
                .flatMap(n -> n.hum().stream())
                .filter(MainsHum::stands)
                .max(Comparator.comparingDouble(MainsHum::power));
        return captures.stream()
                .map(c -> c.noise().isPresent() ? chosen(c, c.noise().get(), loudest, stated.isEmpty()) : c)
                .toList();
    }

    private static CaptureResult chosen(
            CaptureResult capture, NoiseResult noise, Optional<MainsHum> loudest, boolean assumed) {
        MainsHum chosen = noise.hum().stream()
                .filter(h -> loudest.filter(l -> l.nominal() == h.nominal()).isPresent())
                .findFirst()
                .orElse(noise.hum().get(0));
        CaptureResult one = capture.withNoise(noise.withHum(chosen));
        if (!assumed || loudest.isEmpty()) {
            return one;
        }
        List<Doubt> doubts = new ArrayList<>(capture.doubts());
        doubts.add(Doubt.of(
                Severity.NOTE,
                DoubtReason.MAINS_ASSUMED,
                Argument.decimals(loudest.get().nominal(), Unit.HERTZ, 0)));
        return one.withDoubts(doubts);
    }
}
