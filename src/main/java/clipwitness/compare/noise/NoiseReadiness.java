package clipwitness.compare.noise;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Remedy;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.result.ReadyItem;
import clipwitness.job.Limits;
import clipwitness.measure.Measured;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How small an increase of noise and hum can be detected with captures like those before the work: one that exceeds its expanded uncertainty. Of hum nothing is said
 * where no line stands out of the noise yet.
 */
public final class NoiseReadiness {
    private final Limits limits;
    private final InputGain gain;

    /** Readiness of a job; waves say what setting the gain control again does. */
    public NoiseReadiness(Limits limits, Catalogue waves, Repeatability repeatability) {
        this.limits = limits;
        this.gain = new InputGain(waves, repeatability);
    }

    /** What the captures of one setting can tell: of both figures of the noise the one that tells less. */
    public List<ReadyItem> of(NoiseAtCondition setting) {
        NoisePair same = new NoisePair(setting, setting);
        List<ReadyItem> items = new ArrayList<>();
        Measured noise = Arrays.stream(NoiseFigure.values())
                .map(f -> NoiseChange.of(same, f, gain).value())
                .max(Comparator.comparingDouble(NoiseReadiness::uncertainty))
                .orElseThrow();
        items.add(item(ItemQuantity.NOISE, setting, noise));
        if (!same.lines().isEmpty()) {
            items.add(item(
                    ItemQuantity.HUM, setting, NoiseChange.ofHum(same, gain).value()));
        }
        return items;
    }

    private static double uncertainty(Measured change) {
        return change.expandedUncertainty().orElse(Double.POSITIVE_INFINITY);
    }

    private ReadyItem item(ItemQuantity quantity, NoiseAtCondition setting, Measured change) {
        double limit = limits.of(quantity.limit().orElseThrow());
        Optional<Measured.Value> value = change.asValue();
        if (value.isEmpty()) {
            return new ReadyItem(
                    quantity,
                    setting.condition(),
                    limit,
                    change,
                    false,
                    change.reason().map(Remedy::forRefusal));
        }
        double expanded = value.get().expanded();
        return new ReadyItem(
                quantity,
                setting.condition(),
                limit,
                Measured.of(expanded, quantity.unit()),
                expanded <= limit,
                expanded <= limit
                        ? Optional.empty()
                        : Optional.of(Remedy.ofNoWaveBeforehand(value.get(), Remedy.room(limit), setting.runs())));
    }
}
