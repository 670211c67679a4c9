package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.JobResults;
import clipwitness.figure.chart.Axes;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Extent;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * What the figures of one job have in common.
 *
 * @param results results
 * @param palette how the states look
 * @param main    the job's main condition, gain left open
 * @param speech  words and numbers of the report
 */
record FigureContext(JobResults results, StatePalette palette, Condition main, Speech speech) {

    /** The context of a job. */
    static FigureContext of(JobResults results, Condition main, Speech speech) {
        return new FigureContext(results, StatePalette.of(results.job().sheet().states()), main, speech);
    }

    /** A sentence of the words. */
    String say(String name, String... holes) {
        return speech.say(name, holes);
    }

    /** The axis of an output: in volts, or, where a capture says nothing of volts, as a share of full scale. */
    Axis output(Extent extent, int steps) {
        return axes().round(say(hasVolts() ? "axis.output" : "axis.output.full-scale"), voltage(), extent, steps);
    }

    /** The axis of an input, from end to end of its values. */
    Axis input(Extent extent, int steps) {
        return axes().exact(say(hasVolts() ? "axis.input" : "axis.input.full-scale"), voltage(), extent, steps);
    }

    /** The unit of recorded waves: volts, or none where the capture of one says nothing of volts. */
    Unit voltage() {
        return hasVolts() ? Unit.VOLT : Unit.ONE;
    }

    /** The unit of recorded noise, which may come from another recorder than the waves. */
    Unit noiseVoltage() {
        return hasVolts(c -> c.noise().isPresent()) ? Unit.VOLT : Unit.ONE;
    }

    private boolean hasVolts() {
        return hasVolts(c -> c.waveform().isPresent());
    }

    private boolean hasVolts(Predicate<CaptureResult> meant) {
        return results.captures().stream().filter(meant).allMatch(CaptureResult::hasVolts);
    }

    /** Where an item stands in a list: what it is about, its frequency where that is its own, and its condition. */
    String place(Item item) {
        List<String> parts = new ArrayList<>(item.subject().map(ItemSubject::words).map(speech::text).stream()
                .toList());
        frequency(item).ifPresent(parts::add);
        parts.add(controls(item));
        return String.join(", ", parts.stream().filter(p -> !p.isEmpty()).toList());
    }

    /** The frequency of an item of the response, which is its own. */
    private Optional<String> frequency(Item item) {
        OptionalDouble frequency = item.condition().frequency();
        return item.quantity() == ItemQuantity.RESPONSE && frequency.isPresent()
                ? Optional.of(numbers().frequency(frequency.getAsDouble()))
                : Optional.empty();
    }

    /** How the controls stood; empty where that says nothing. */
    private String controls(Item item) {
        if (item.condition().equals(Condition.NONE)) {
            return "";
        }
        return frequency(item).isPresent()
                ? conditions().of(item.condition().withoutFrequency(), main.withoutFrequency())
                : conditions().of(item.condition(), main);
    }

    /** Where items of one quantity stand: place by place, those of a response with their frequencies first and what they share once. */
    String places(List<Item> items) {
        Map<String, List<String>> byControls = new LinkedHashMap<>();
        for (Item item : items) {
            Optional<String> frequency = frequency(item);
            byControls
                    .computeIfAbsent(frequency.isPresent() ? controls(item) : "", c -> new ArrayList<>())
                    .add(frequency.orElseGet(() -> place(item)));
        }
        List<String> places = new ArrayList<>();
        byControls.forEach((controls, list) ->
                places.add(String.join(", ", list) + (controls.isEmpty() ? "" : " (" + controls + ")")));
        return String.join(", ", places);
    }

    /** The unit of a quantity's change. */
    String unit(ItemQuantity quantity) {
        return speech.sayOr("unit.change." + quantity.key(), quantity.symbol());
    }

    /** Numbers as the report's language writes them. */
    NumberText numbers() {
        return speech.numbers();
    }

    /** The comparisons in words. */
    PictureWords comparisons() {
        return new PictureWords(this);
    }

    /** Makes the axes. */
    Axes axes() {
        return new Axes(numbers());
    }

    /** Conditions in words. */
    ConditionWords conditions() {
        return new ConditionWords(speech);
    }

    /** Measured values in words. */
    ValueWords values() {
        return new ValueWords(speech);
    }

    /** What a sentence calls a state. */
    String called(String state) {
        return results.job().sheet().called(state);
    }

    /** The title of a figure at a position of the gain control, and under another condition than the main one. */
    String title(String name, OptionalDouble gainPercent, Condition condition) {
        return say(
                name,
                "condition",
                conditions().gain(gainPercent),
                "other",
                conditions().difference(condition, main));
    }

    /** The title of a figure of all positions of the gain control, under another condition than the main one. */
    String title(String name, Condition condition) {
        return say(name, "other", conditions().difference(condition, main));
    }

    /** What a figure says at a position of the gain control, part by part. */
    String tell(String name, OptionalDouble gainPercent, List<String> parts) {
        return say(name, "condition", conditions().gain(gainPercent), "list", Sentences.parts(parts));
    }
}
