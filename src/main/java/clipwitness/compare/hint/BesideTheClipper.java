package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import clipwitness.job.Limits;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.quantity.LimitQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What changed in an unchanged state is level, or harmonics over the fundamental in the pattern of one low-pass or high-pass, and it moved
 * alike at all settings, those included where nothing clips. A clipper moves nothing where it does not work, so the cause lies beside it.
 * Harmonics are taken at the settings that clipped before; the pattern of one low-pass is that no harmonic moved up more than a lower one,
 * of one high-pass that none moved down more. What moved less than the limits of level and distortion is not looked at.
 */
final class BesideTheClipper implements HintRule {
    private static final int HIGHEST_ORDER = 9;

    /** What the pattern may miss beside the uncertainties, dB: a real tone control is no filter of the first order. */
    private static final double ROUGHNESS_DB = 0.5;

    /** Decimals of the changes in the evidence, dB. */
    private static final int DECIMALS = 1;

    @Override
    public List<Hint> look(Evidence evidence) {
        return Symptom.hints(evidence.states(Role.UNCHANGED).stream()
                .flatMap(s -> look(evidence, s).stream())
                .toList());
    }

    private static Optional<Symptom.Seen> look(Evidence evidence, State state) {
        List<Evidence.Pair> pairs = evidence.pairs(state);
        List<Evidence.Pair> clean = pairs.stream()
                .filter(p -> !p.from().isClipped() && !p.to().isClipped())
                .toList();
        List<Evidence.Pair> clipped = evidence.clippedBefore(state);
        boolean all = clean.size() + clipped.size() == pairs.size();
        if (clean.isEmpty() || clipped.isEmpty() || !all) {
            return Optional.empty();
        }
        Optional<CommonShift> level =
                CommonShift.of(pairs.stream().map(p -> evidence.shiftOf(p, 1)).toList(), ROUGHNESS_DB);
        return level.flatMap(l -> harmonics(evidence, clipped)
                .flatMap(h -> look(evidence.job().sheet().limits(), l, h)
                        .map(look -> new Symptom.Seen(look, state, evidence(l, h, clean.get(0))))));
    }

    /** How the harmonics over the fundamental moved; empty where one of them did not move alike at all settings. */
    private static Optional<List<CommonShift>> harmonics(Evidence evidence, List<Evidence.Pair> clipped) {
        List<CommonShift> shifts = new ArrayList<>();
        for (int order = 2; order <= HIGHEST_ORDER; order++) {
            int k = order;
            List<Optional<Shift>> known = clipped.stream()
                    .map(p -> evidence.shiftOverFundamental(p, k))
                    .filter(Optional::isPresent)
                    .toList();
            if (!known.isEmpty()) {
                Optional<CommonShift> common = CommonShift.of(known, 2 * ROUGHNESS_DB);
                if (common.isEmpty()) {
                    return Optional.empty();
                }
                shifts.add(common.get().ofOrder(k));
            }
        }
        return Optional.of(shifts);
    }

    private static Optional<Symptom> look(Limits limits, CommonShift level, List<CommonShift> harmonics) {
        double least = limits.of(LimitQuantity.THD);
        if (moved(harmonics, -1, least) && isPattern(harmonics, -1)) {
            return Optional.of(Symptom.DULLER);
        }
        if (moved(harmonics, 1, least) && isPattern(harmonics, 1)) {
            return Optional.of(Symptom.THINNER);
        }
        boolean still = !moved(harmonics, -1, least) && !moved(harmonics, 1, least);
        return still && Math.abs(level.mean()) - level.expanded() > limits.of(LimitQuantity.LEVEL)
                ? Optional.of(Symptom.OTHER_LEVEL)
                : Optional.empty();
    }

    private static boolean moved(List<CommonShift> harmonics, int sign, double least) {
        return harmonics.stream().anyMatch(h -> sign * h.mean() - h.expanded() > least);
    }

    /** Whether each harmonic moved in a direction at least as far as every lower one, the fundamental by nothing. */
    private static boolean isPattern(List<CommonShift> harmonics, int sign) {
        double furthest = 0;
        double expanded = 0;
        for (CommonShift h : harmonics) {
            double missing = furthest - sign * h.mean();
            if (missing > Math.hypot(expanded, h.expanded()) + ROUGHNESS_DB) {
                return false;
            }
            if (sign * h.mean() > furthest) {
                furthest = sign * h.mean();
                expanded = h.expanded();
            }
        }
        return true;
    }

    private static Remark evidence(CommonShift level, List<CommonShift> harmonics, Evidence.Pair clean) {
        Argument place = clean.place();
        Argument most = Argument.signed(level.most(), Unit.DECIBEL, DECIMALS);
        Remark evidence = level.isOne(DECIMALS)
                ? Remark.of(HintRemark.BESIDE_BY_ONE_LEVEL, most, place)
                : Remark.of(
                        HintRemark.BESIDE_BY_LEVEL,
                        Argument.signed(level.least(), Unit.DECIBEL, DECIMALS),
                        most,
                        place);
        for (CommonShift h : harmonics) {
            if (h.order() == 3 || h.order() == 7) {
                evidence = harmonic(evidence, h);
            }
        }
        return evidence;
    }

    private static Remark harmonic(Remark evidence, CommonShift shift) {
        Argument before = Argument.inner(evidence);
        Argument order = Argument.count(shift.order());
        return shift.isStill(DECIMALS)
                ? Remark.of(
                        HintRemark.BESIDE_BY_STILL_HARMONIC,
                        before,
                        order,
                        Argument.decimals(shift.bound(DECIMALS), Unit.DECIBEL, DECIMALS))
                : Remark.of(
                        HintRemark.BESIDE_BY_HARMONIC,
                        before,
                        order,
                        Argument.signed(shift.mean(), Unit.DECIBEL, DECIMALS));
    }
}
