package clipwitness.compare.ready;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Change;
import clipwitness.compare.judge.Drift;
import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.NullItem;
import clipwitness.compare.judge.PairDoubts;
import clipwitness.compare.judge.Remedy;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.ReplicatesThatDiffer;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.noise.MainsChoice;
import clipwitness.compare.noise.NoiseCatalogue;
import clipwitness.compare.noise.NoiseReadiness;
import clipwitness.compare.response.ResponseCatalogue;
import clipwitness.compare.response.ResponseReadiness;
import clipwitness.compare.response.SweepDoubts;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ReadyItem;
import clipwitness.compare.result.ReadyResult;
import clipwitness.job.Job;
import clipwitness.job.Limits;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How small a change can be detected with the captures taken before the work. A change is detected when it exceeds its expanded uncertainty, which is
 * taken as that of two captures like the one that there is, at one range and one temperature.
 */
public final class Readiness {
    private final Limits limits;
    private final Repeatability repeatability;
    private final Change change;

    private Readiness(Job job, Catalogue catalogue) {
        this.limits = job.sheet().limits();
        this.repeatability = new Repeatability(catalogue, job.sheet().bench());
        this.change = new Change(repeatability, Drift.of(job.sheet()));
    }

    /**
     * Looks at a job before the work.
     *
     * @param job      the job
     * @param measured captures of its states before the work, read and measured
     */
    public static ReadyResult of(Job job, List<CaptureResult> measured) {
        List<CaptureResult> captures = MainsChoice.made(
                ReplicatesThatDiffer.refused(measured), job.sheet().bench().mains());
        Catalogue catalogue = Catalogue.of(captures, job.sheet()::called);
        Readiness readiness = new Readiness(job, catalogue);
        NoiseCatalogue noise = NoiseCatalogue.of(captures, job.sheet()::called);
        NoiseReadiness ofNoise = new NoiseReadiness(readiness.limits, catalogue, readiness.repeatability);
        ResponseReadiness ofResponse = new ResponseReadiness(
                job.sheet(), ResponseCatalogue.of(captures, job.sheet()::called), catalogue, readiness.repeatability);
        List<ReadyItem> items = new ArrayList<>();
        for (State state : job.sheet().states(Role.BEFORE)) {
            catalogue.of(state.name()).forEach(s -> items.addAll(readiness.items(s)));
            noise.of(state.name()).forEach(s -> items.addAll(ofNoise.of(s)));
            items.addAll(ofResponse.of(state.name()));
        }
        List<CaptureResult> doubted =
                new PairDoubts(job, catalogue, readiness.repeatability).added(SweepDoubts.added(captures, catalogue));
        return new ReadyResult(items, new BenchList(job, catalogue, doubted).all());
    }

    private List<ReadyItem> items(StateAtCondition setting) {
        List<ReadyItem> items = new ArrayList<>();
        for (ItemValue figure : ItemValue.all()) {
            if (figure.item().limit().isPresent() && (!figure.equals(ItemValue.THD) || setting.hasThdToJudge())) {
                items.add(item(figure, setting));
            }
        }
        items.add(nullDepth(setting));
        return items;
    }

    private ReadyItem item(ItemValue figure, StateAtCondition setting) {
        double limit = limits.of(figure.item().limit().orElseThrow());
        Measured same = change.of(setting, setting, figure);
        Optional<Measured.Value> value = same.asValue();
        if (value.isEmpty()) {
            return refused(figure.item(), setting, limit, same);
        }
        double expanded = value.get().expanded();
        boolean sufficient = expanded <= limit;
        return new ReadyItem(
                figure.item(),
                setting.condition(),
                limit,
                Measured.of(expanded, figure.item().unit()),
                sufficient,
                sufficient
                        ? Optional.empty()
                        : Optional.of(Remedy.beforehand(value.get(), Remedy.room(limit), setting)));
    }

    private ReadyItem nullDepth(StateAtCondition setting) {
        double limit = limits.of(ItemQuantity.NULL_DEPTH.limit().orElseThrow());
        Measured depth = NullItem.smallest(setting, repeatability);
        if (depth.value().isEmpty()) {
            return refused(ItemQuantity.NULL_DEPTH, setting, limit, depth);
        }
        return new ReadyItem(
                ItemQuantity.NULL_DEPTH,
                setting.condition(),
                limit,
                depth,
                depth.value().getAsDouble() <= limit,
                Optional.empty());
    }

    private static ReadyItem refused(ItemQuantity quantity, StateAtCondition setting, double limit, Measured refusal) {
        return new ReadyItem(
                quantity,
                setting.condition(),
                limit,
                refusal,
                false,
                refusal.reason().map(Remedy::forRefusal));
    }
}
