package clipwitness.compare.response;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Remedy;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.noise.InputGain;
import clipwitness.compare.result.ReadyItem;
import clipwitness.job.JobSheet;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.LimitQuantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** How small a change of the response can be detected with captures like those before the work: at the frequency that tells least. */
public final class ResponseReadiness {
    private final JobSheet sheet;
    private final ResponseCatalogue responses;
    private final InputGain gain;

    /** Readiness of a job; waves say what setting the gain control again does. */
    public ResponseReadiness(
            JobSheet sheet, ResponseCatalogue responses, Catalogue waves, Repeatability repeatability) {
        this.sheet = sheet;
        this.responses = responses;
        this.gain = new InputGain(waves, repeatability);
    }

    /** What the responses of a state can tell, one item for each position of the controls. */
    public List<ReadyItem> of(String state) {
        return responses.of(state).stream().flatMap(this::of).toList();
    }

    private record At(double frequency, Measured change) {
        double uncertainty() {
            return change.expandedUncertainty().orElse(Double.POSITIVE_INFINITY);
        }
    }

    private Stream<ReadyItem> of(ResponseAtCondition setting) {
        ResponsePair same = new ResponsePair(setting, setting);
        List<At> all = same.common().stream()
                .map(f -> new At(
                        f,
                        ResponseChange.at(same, f, gain, sheet.bench().verticalAccuracy())
                                .value()))
                .filter(at -> !setting.swept() || at.change().value().isPresent())
                .toList();
        return judged(setting, all).stream()
                .max(Comparator.comparingDouble(At::uncertainty))
                .map(at -> item(setting, at))
                .stream();
    }

    private List<At> judged(ResponseAtCondition setting, List<At> all) {
        if (!setting.swept()) {
            return all;
        }
        JudgedBand band = JudgedBand.of(
                all.stream().map(At::change).toList(), sheet.limits().of(LimitQuantity.RESPONSE));
        return all.subList(band.first(), band.last() + 1);
    }

    private ReadyItem item(ResponseAtCondition setting, At worst) {
        double limit = sheet.limits().of(LimitQuantity.RESPONSE);
        Condition open = setting.condition();
        Condition at =
                new Condition(open.gainPercent(), OptionalDouble.of(worst.frequency()), open.level(), open.setting());
        Optional<Measured.Value> value = worst.change().asValue();
        if (value.isEmpty()) {
            return new ReadyItem(
                    ItemQuantity.RESPONSE,
                    at,
                    limit,
                    worst.change(),
                    false,
                    worst.change().reason().map(Remedy::forRefusal));
        }
        double expanded = value.get().expanded();
        boolean sufficient = expanded <= limit;
        return new ReadyItem(
                ItemQuantity.RESPONSE,
                at,
                limit,
                Measured.of(expanded, ItemQuantity.RESPONSE.unit()),
                sufficient,
                sufficient
                        ? Optional.empty()
                        : Optional.of(Remedy.ofNoWaveBeforehand(value.get(), Remedy.room(limit), setting.runs())));
    }
}
