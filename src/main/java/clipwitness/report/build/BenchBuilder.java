package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.job.Bench;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Instrument;
import clipwitness.job.JobSheet;
import clipwitness.job.State;
import clipwitness.job.Stimulus;
import clipwitness.quantity.Unit;
import clipwitness.report.model.BenchPart;
import clipwitness.report.model.Fact;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Where and with what was measured, from the job sheet; what no capture and no reading needed is left out. */
final class BenchBuilder {
    private final JobWording wording;

    BenchBuilder(JobWording wording) {
        this.wording = wording;
    }

    /** What of the bench and the test tone counts for the captures and readings of a job. */
    BenchPart of(JobResults results) {
        JobSheet sheet = results.job().sheet();
        return new BenchPart(
                conditions(
                        sheet,
                        results.captures().stream().map(CaptureResult::row).toList()),
                sheet.bench().instruments().stream().map(this::instrument).toList(),
                results.captures().stream().anyMatch(c -> isOfOutput(c.row())) ? stimulus(sheet.stimulus()) : "",
                sheet.settings().entrySet().stream()
                        .map(e -> new Fact(e.getKey(), e.getValue()))
                        .toList(),
                sheet.states().stream().map(this::state).toList());
    }

    private static boolean isOfOutput(CaptureRow row) {
        return row.kind() != CaptureKind.JUNCTION && row.kind() != CaptureKind.LISTENING;
    }

    private List<Fact> conditions(JobSheet sheet, List<CaptureRow> captures) {
        Bench bench = sheet.bench();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(wording.say("bench.name.temperature"), temperature(bench.temperature())));
        add(facts, "bench.name.mains", bench.mains(), Unit.HERTZ);
        add(facts, "bench.name.load", bench.load(), Unit.OHM);
        add(facts, "bench.name.termination", bench.inputTermination(), Unit.OHM);
        if (captures.stream().anyMatch(BenchBuilder::isOfOutput)) {
            facts.add(share("bench.name.vertical", "bench.vertical", bench.verticalAccuracy()));
        }
        if (captures.stream().anyMatch(r -> r.condition().gainPercent().isPresent())) {
            facts.add(share("bench.name.knob", "bench.knob", bench.knobRepeatability()));
        }
        if (!sheet.rails().isEmpty()) {
            facts.add(share("bench.name.meter", "bench.meter", bench.meterAccuracy()));
        }
        return facts;
    }

    private String temperature(OptionalDouble celsius) {
        String value = wording.numbers().nominal(celsius.orElse(Bench.DEFAULT_TEMPERATURE), Unit.CELSIUS);
        return wording.say(celsius.isPresent() ? "bench.temperature" : "bench.temperature.default", "value", value);
    }

    private void add(List<Fact> facts, String name, OptionalDouble value, Unit unit) {
        value.ifPresent(
                v -> facts.add(new Fact(wording.say(name), wording.numbers().nominal(v, unit))));
    }

    private Fact share(String name, String sentence, double ratio) {
        return new Fact(wording.say(name), wording.say(sentence, "value", share(ratio)));
    }

    private String share(double ratio) {
        return wording.numbers().nominal(100 * ratio, Unit.PERCENT);
    }

    private Fact instrument(Instrument instrument) {
        List<String> parts = new ArrayList<>();
        Stream.of(instrument.what()).filter(s -> !s.isBlank()).forEach(parts::add);
        if (!instrument.serial().isBlank()) {
            parts.add(wording.say("instrument.serial", "value", instrument.serial()));
        }
        instrument.calibrated().ifPresent(d -> parts.add(wording.say("instrument.calibrated", "value", d.toString())));
        if (instrument.bits().isPresent()) {
            parts.add(wording.say(
                    "instrument.bits",
                    "value",
                    Integer.toString(instrument.bits().getAsInt())));
        }
        instrument.verticalAccuracy().ifPresent(v -> parts.add(wording.say("instrument.vertical", "value", share(v))));
        return new Fact(instrument.name(), String.join(", ", parts));
    }

    private String stimulus(Stimulus stimulus) {
        String shape = stimulus.shape().equals(Stimulus.SINE) ? wording.say("stimulus.sine") : stimulus.shape();
        if (stimulus.frequency().isEmpty() || stimulus.level().isEmpty()) {
            return wording.say("stimulus.open", "shape", shape);
        }
        return wording.say(
                "stimulus",
                "shape",
                shape,
                "frequency",
                wording.numbers().nominal(stimulus.frequency().getAsDouble(), Unit.HERTZ),
                "level",
                wording.numbers().nominal(stimulus.level().getAsDouble(), Unit.VOLT));
    }

    /** A state by the short name that heads its columns, with its label where that is another. */
    private Fact state(State state) {
        String alone = wording.say("role." + state.role().code());
        String role = state.against()
                .map(from -> wording.say("role.against", "role", alone, "from", wording.called(from)))
                .orElse(alone);
        String head = wording.headed(state.name());
        boolean same = head.equalsIgnoreCase(state.label());
        return new Fact(head, same ? role : wording.say("role.named", "label", state.label(), "role", role));
    }
}
