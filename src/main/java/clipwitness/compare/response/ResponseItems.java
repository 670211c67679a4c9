package clipwitness.compare.response;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.ItemSource;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.Ruling;
import clipwitness.compare.judge.Tolerance;
import clipwitness.compare.noise.InputGain;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.NoPair;
import clipwitness.job.JobSheet;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.LimitQuantity;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Items of the frequency response: the change of the gain, one a frequency. It is judged where the state must still be what it was. */
public final class ResponseItems implements ItemSource {
    private final JobSheet sheet;
    private final ResponseCatalogue catalogue;
    private final InputGain gain;

    /**
     * Items of a job.
     *
     * @param waves captures that say how much setting the gain control again moves the gain
     */
    public ResponseItems(JobSheet sheet, ResponseCatalogue catalogue, Catalogue waves, Repeatability repeatability) {
        this.sheet = sheet;
        this.catalogue = catalogue;
        this.gain = new InputGain(waves, repeatability);
    }

    @Override
    public List<Item> of(String from, String to, Intent intent) {
        List<Item> items = new ArrayList<>();
        for (ResponsePair pair : catalogue.pairs(from, to)) {
            items.addAll(of(pair, intent == Intent.UNCHANGED));
        }
        return items;
    }

    private record At(double frequency, ResponseChange change) {}

    private List<Item> of(ResponsePair pair, boolean judge) {
        List<At> changes = pair.common().stream()
                .map(f ->
                        new At(f, ResponseChange.at(pair, f, gain, sheet.bench().verticalAccuracy())))
                .filter(at ->
                        at.change().value().value().isPresent() || !pair.from().swept())
                .toList();
        JudgedBand band =
                band(pair, changes.stream().map(at -> at.change().value()).toList());
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            items.add(item(pair, changes.get(i).frequency(), changes.get(i).change(), judge && band.holds(i)));
        }
        return items;
    }

    /** Frequencies of steady tones were chosen, and are judged all. */
    private JudgedBand band(ResponsePair pair, List<Measured> changes) {
        return pair.from().swept()
                ? JudgedBand.of(changes, sheet.limits().of(LimitQuantity.RESPONSE))
                : new JudgedBand(0, changes.size() - 1);
    }

    private Item item(ResponsePair pair, double frequency, ResponseChange change, boolean judge) {
        double limit = sheet.limits().of(LimitQuantity.RESPONSE);
        Condition open = pair.from().condition();
        Ruling ruling = Ruling.ofNoWave(
                ItemQuantity.RESPONSE,
                new Condition(open.gainPercent(), OptionalDouble.of(frequency), open.level(), open.setting()),
                limit,
                Tolerance.within(limit),
                new Ruling.States(
                        pair.from().name(), pair.to().name(), pair.to().runs()),
                change.stays());
        return judge ? ruling.judged(change.value()) : ruling.described(change.value());
    }

    @Override
    public Optional<Reason> whyNot(ItemQuantity quantity, String from, String to) {
        if (quantity != ItemQuantity.RESPONSE) {
            return Optional.empty();
        }
        NoPair none = new NoPair(sheet, from, to);
        return none.noCapture(Word.RESPONSE, s -> !catalogue.of(s).isEmpty()).or(() -> {
            boolean shared = catalogue.of(from).stream()
                    .anyMatch(a -> catalogue.of(to).stream().anyMatch(a::sharesExport));
            return Optional.of(none.notCommon(shared, ComparisonReason.NO_COMMON_RESPONSE));
        });
    }
}
