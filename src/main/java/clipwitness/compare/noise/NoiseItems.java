package clipwitness.compare.noise;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.ItemSource;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.Ruling;
import clipwitness.compare.judge.Tolerance;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.NoPair;
import clipwitness.job.Job;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Items of noise and hum. An increase is judged, a decrease passes. A state that is meant to differ has its noise judged only after both states were referred to
 * their inputs; its hum is judged all the same.
 */
public final class NoiseItems implements ItemSource {
    private static final Map<NoiseFigure, ItemSubject> SUBJECTS = Map.of(
            NoiseFigure.RMS, subject(NoiseFigure.RMS, Word.NOISE_RMS),
            NoiseFigure.A_WEIGHTED, subject(NoiseFigure.A_WEIGHTED, Word.NOISE_A_WEIGHTED));

    private final Job job;
    private final NoiseCatalogue catalogue;
    private final InputGain gain;

    /**
     * Items of a job.
     *
     * @param waves captures that say how much the unit amplifies
     */
    public NoiseItems(Job job, NoiseCatalogue catalogue, Catalogue waves, Repeatability repeatability) {
        this.job = job;
        this.catalogue = catalogue;
        this.gain = new InputGain(waves, repeatability);
    }

    private static ItemSubject subject(NoiseFigure figure, Word word) {
        return new ItemSubject(figure.key(), Remark.of(word), ItemSubject.Against.BEFORE);
    }

    @Override
    public List<Item> of(String from, String to, Intent intent) {
        List<Item> items = new ArrayList<>();
        for (NoisePair pair : catalogue.pairs(from, to)) {
            for (NoiseFigure figure : NoiseFigure.values()) {
                items.add(ofFigure(pair, figure, intent));
            }
            if (!pair.lines().isEmpty()) {
                items.add(item(pair, ItemQuantity.HUM, NoiseChange.ofHum(pair, gain), intent != Intent.DESCRIBED));
            }
        }
        return items;
    }

    private Item ofFigure(NoisePair pair, NoiseFigure figure, Intent intent) {
        Optional<NoiseChange> atInput =
                intent == Intent.CHANGED ? NoiseChange.atInput(pair, figure, gain) : Optional.empty();
        return atInput.map(change -> item(pair, ItemQuantity.NOISE, change, true))
                .orElseGet(() ->
                        item(pair, ItemQuantity.NOISE, NoiseChange.of(pair, figure, gain), intent == Intent.UNCHANGED))
                .about(SUBJECTS.get(figure));
    }

    private Item item(NoisePair pair, ItemQuantity quantity, NoiseChange change, boolean judge) {
        double limit = job.sheet().limits().of(quantity.limit().orElseThrow());
        Ruling ruling = Ruling.ofNoWave(
                quantity,
                pair.from().condition(),
                limit,
                Tolerance.atMost(limit),
                new Ruling.States(
                        pair.from().name(), pair.to().name(), pair.to().runs()),
                change.stays());
        return judge ? ruling.judged(change.value()) : ruling.described(change.value());
    }

    @Override
    public Optional<Reason> whyNot(ItemQuantity quantity, String from, String to) {
        return switch (quantity) {
            case NOISE -> Optional.of(noCaptures(from, to));
            case HUM -> Optional.of(catalogue.pairs(from, to).isEmpty() ? noCaptures(from, to) : noHum(from, to));
            default -> Optional.empty();
        };
    }

    private Reason noCaptures(String from, String to) {
        NoPair none = new NoPair(job.sheet(), from, to);
        return none.noCapture(Word.NOISE, s -> !catalogue.of(s).isEmpty()).orElseGet(() -> {
            boolean shared = catalogue.of(from).stream()
                    .anyMatch(a -> catalogue.at(to, a.condition()).isPresent());
            return none.notCommon(shared, ComparisonReason.NO_COMMON_NOISE);
        });
    }

    private Reason noHum(String from, String to) {
        List<NoisePair> pairs = catalogue.pairs(from, to);
        Optional<NoiseAtCondition> refused =
                pairs.stream().flatMap(p -> p.withoutHum().stream()).findFirst();
        if (refused.isPresent()) {
            Reason why = refused.get().humRefused().orElseThrow();
            return Reason.of(FrameReason.IN_STATE, refused.get().name(), Argument.inner(why));
        }
        OptionalDouble mains = job.sheet().bench().mains();
        double nominal = pairs.get(0).to().lines().nominal();
        boolean known = mains.isPresent()
                || catalogue.all().stream().anyMatch(s -> s.lines().stands());
        return known
                ? Reason.of(ComparisonReason.NO_HUM, Argument.decimals(nominal, Unit.HERTZ, 0))
                : Reason.of(ComparisonReason.NO_HUM_OF_ANY_MAINS);
    }
}
