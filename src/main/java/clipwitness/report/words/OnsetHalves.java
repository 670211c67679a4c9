package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Decibels;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which half of the wave begins to clip elsewhere, at the setting where it differs most: two halves that go opposite ways can leave the
 * distortion where it was.
 */
final class OnsetHalves {
    /** What lies closer together begins alike to a listener, dB (common practice). */
    private static final double LEAST_DECIBELS = 1;

    private final JobWording wording;
    private final StateValues figures;

    OnsetHalves(JobWording wording, StateValues figures) {
        this.wording = wording;
        this.figures = figures;
    }

    private record Half(Condition condition, String name, Difference onset) {
        double decibels() {
            double ratio = onset.now().number() / onset.before().number();
            return Math.abs(Decibels.ofAmplitude(ratio));
        }

        boolean isElsewhere() {
            return !onset.bounded()
                    && Math.abs(onset.change()) > WhatDiffers.OF_MANY * onset.uncertainty()
                    && decibels() > LEAST_DECIBELS;
        }
    }

    /**
     * What differs under one condition.
     *
     * @param condition where
     * @param halves    {@code the lower half of its wave begins to clip later, at 65 mV of input instead of 30 mV}
     */
    record Told(Condition condition, String halves) {}

    /**
     * What differs; empty where both halves begin alike everywhere.
     *
     * @param everything the condition but the gain
     */
    Optional<Told> of(Comparison comparison, Condition everything) {
        List<Half> elsewhere = comparison.items().stream()
                .map(Item::condition)
                .distinct()
                .filter(c -> c.withoutGain().equals(everything))
                .flatMap(c -> halves(comparison, c))
                .filter(Half::isElsewhere)
                .toList();
        return elsewhere.stream()
                .max(Comparator.comparingDouble(Half::decibels))
                .map(Half::condition)
                .map(c -> new Told(
                        c,
                        wording.list(elsewhere.stream()
                                .filter(h -> h.condition().equals(c))
                                .map(this::told)
                                .toList())));
    }

    private Stream<Half> halves(Comparison comparison, Condition condition) {
        List<Half> halves = new ArrayList<>();
        figures.difference(comparison, condition, WaveformQuantity.ONSET_UP)
                .ifPresent(d -> halves.add(new Half(condition, "half.upper", d)));
        figures.difference(comparison, condition, WaveformQuantity.ONSET_DOWN)
                .ifPresent(d -> halves.add(new Half(condition, "half.lower", d)));
        return halves.stream();
    }

    private String told(Half half) {
        Difference onset = half.onset();
        return wording.say(
                onset.isRise() ? "finding.onset.half.later" : "finding.onset.half.earlier",
                "half",
                wording.say(half.name()),
                "now",
                volts(onset.now()),
                "before",
                volts(onset.before()));
    }

    private String volts(Measured.Value onset) {
        return wording.numbers().rounded(onset.number(), onset.unit(), 2);
    }
}
