package clipwitness.compare.device;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.PairCurve;
import clipwitness.compare.result.TracedDevice;
import clipwitness.job.Clipper;
import clipwitness.job.ClipperPair;
import clipwitness.job.Job;
import clipwitness.measure.match.MatchedPair;
import clipwitness.measure.match.Mismatch;
import clipwitness.measure.match.NamedDevice;
import clipwitness.measure.match.Pairing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The traced devices of a job: which match, which sit in a clipper, what they predict. */
public final class DeviceExamination {
    private DeviceExamination() {}

    public static Devices of(Job job, List<CaptureResult> captures, Catalogue catalogue, Repeatability repeatability) {
        List<TracedDevice> traced = TracedDevice.among(captures);
        Optional<Clipper> clipper = job.sheet().clipper();
        if (traced.isEmpty() && clipper.isEmpty()) {
            return Devices.NONE;
        }
        Map<String, NamedDevice> byName = TracedDevice.byName(traced);
        return new Devices(
                traced,
                Pairing.of(List.copyOf(byName.values())),
                clipper.map(c -> fitted(c, byName)).orElse(Map.of()),
                clipper.map(c -> combined(c, byName)).orElse(Map.of()),
                clipper.map(c -> new Predictor(job, c, byName, catalogue, repeatability).all())
                        .orElse(List.of()));
    }

    private static Map<String, MatchedPair> fitted(Clipper clipper, Map<String, NamedDevice> byName) {
        Map<String, MatchedPair> fitted = new LinkedHashMap<>();
        clipper.pairs().forEach((state, pair) -> match(pair, byName).ifPresent(m -> fitted.put(state, m)));
        return fitted;
    }

    private static Map<String, PairCurve> combined(Clipper clipper, Map<String, NamedDevice> byName) {
        Map<String, PairCurve> combined = new LinkedHashMap<>();
        clipper.pairs().forEach((state, pair) -> {
            ClipperOfState legs = new ClipperOfState(pair, byName);
            if (legs.missing().isEmpty()) {
                combined.put(state, PairCurve.of(legs.pair()));
            }
        });
        return combined;
    }

    private static Optional<MatchedPair> match(ClipperPair pair, Map<String, NamedDevice> byName) {
        if (pair.up().devices().size() != 1 || pair.down().devices().size() != 1) {
            return Optional.empty();
        }
        NamedDevice up = byName.get(pair.up().devices().get(0));
        NamedDevice down = byName.get(pair.down().devices().get(0));
        return up == null || down == null ? Optional.empty() : Mismatch.of(up, down);
    }
}
