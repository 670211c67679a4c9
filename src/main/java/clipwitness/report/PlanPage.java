package clipwitness.report;

import clipwitness.compare.plan.BenchPlan;
import clipwitness.compare.plan.Reach;
import clipwitness.job.JobSheet;
import clipwitness.job.Leg;
import clipwitness.job.Rail;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.report.model.Fact;
import clipwitness.words.Speech;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the template of the bench plan receives: finished texts, empty where there is nothing to say.
 *
 * @param job      number of the job
 * @param basis    what the plan is made for
 * @param settings how to capture
 * @param states   labels of the states
 * @param captures what to capture in each state
 * @param order    in which order
 * @param reach    what can be shown
 * @param remarks  what cannot, and by which margin
 * @param software program and version
 */
record PlanPage(
        String job,
        String basis,
        List<Fact> settings,
        List<String> states,
        List<CaptureLine> captures,
        String order,
        List<ReachLine> reach,
        List<String> remarks,
        String software) {
    private static final int DIVISIONS = 8;
    private static final int HUNDRED = 100;
    /** Set twice in any case, so that something shows how well the control is set again. */
    private static final double MIDDLE = 50;

    /**
     * A capture.
     *
     * @param name  what is captured
     * @param boxes one for each take
     */
    record CaptureLine(String name, List<Integer> boxes) {
        static CaptureLine of(String name, int takes) {
            return new CaptureLine(name, Collections.nCopies(takes, 1));
        }
    }

    /**
     * What can be shown of one quantity.
     *
     * @param quantity its name
     * @param limit    its limit
     * @param stops    smallest change at the end stops
     * @param between  smallest change between them
     */
    record ReachLine(String quantity, String limit, String stops, String between) {}

    static PlanPage of(BenchPlan plan, String software) {
        return new Maker(plan).page(software);
    }

    /** Puts a plan into words. */
    private static final class Maker {
        private static final Speech SPEECH = Speech.ENGLISH;
        private static final NumberText NUMBERS = SPEECH.numbers();

        private final BenchPlan plan;
        private final JobSheet sheet;

        Maker(BenchPlan plan) {
            this.plan = plan;
            this.sheet = plan.sheet();
        }

        PlanPage page(String software) {
            String number = sheet.report().number();
            return new PlanPage(
                    plan.stated() ? SPEECH.say("plan.job", "number", number) : "",
                    plan.stated() ? SPEECH.say("plan.basis.sheet", "number", number) : SPEECH.say("plan.basis.usual"),
                    settings(),
                    sheet.states().stream().map(State::label).toList(),
                    captures(),
                    SPEECH.say("plan.order", "before", before()),
                    reach().map(this::line).toList(),
                    remarks(),
                    software);
        }

        private String before() {
            return sheet.states(Role.BEFORE).stream().map(State::label).collect(Collectors.joining(", "));
        }

        private List<Fact> settings() {
            List<Fact> facts = new ArrayList<>(List.of(tone(), record(), scale(), gains(), noise(), sweep()));
            if (sheet.clipper().isPresent() || !plan.stated()) {
                facts.add(new Fact(SPEECH.say("plan.devices"), SPEECH.say("plan.devices.text", "devices", devices())));
            }
            return facts;
        }

        private Fact tone() {
            boolean stated = sheet.stimulus().frequency().isPresent();
            return new Fact(
                    SPEECH.say("plan.tone"),
                    SPEECH.say(
                            stated ? "plan.tone.sheet" : "plan.tone.usual",
                            "frequency",
                            NUMBERS.nominal(plan.frequency(), Unit.HERTZ),
                            "level",
                            NUMBERS.nominal(plan.level(), Unit.VOLT)));
        }

        private Fact record() {
            BenchPlan.WaveRecord wave = plan.wave();
            double time = wave.periods() / plan.frequency();
            return new Fact(
                    SPEECH.say("plan.record"),
                    SPEECH.say(
                            "plan.record.text",
                            "periods",
                            Integer.toString(wave.periods()),
                            "time",
                            NUMBERS.nominal(time, Unit.SECOND),
                            "samples",
                            Integer.toString(wave.samples()),
                            "interval",
                            NUMBERS.rounded(time / wave.samples(), Unit.SECOND, 2)));
        }

        private Fact scale() {
            double divisions = DIVISIONS * plan.wave().screen();
            return new Fact(
                    SPEECH.say("plan.scale"),
                    SPEECH.say("plan.scale.text", "divisions", NUMBERS.nominal(divisions, Unit.ONE)));
        }

        private Fact gains() {
            String gains = plan.gains().stream()
                    .map(g -> NUMBERS.nominal(g, Unit.PERCENT))
                    .collect(Collectors.joining(", "));
            return new Fact(
                    SPEECH.say("plan.gains"),
                    plan.runs() > 1
                            ? SPEECH.say("plan.gains.runs", "gains", gains, "runs", Integer.toString(plan.runs()))
                            : SPEECH.say(
                                    "plan.gains.once",
                                    "gains",
                                    gains,
                                    "middle",
                                    NUMBERS.nominal(MIDDLE, Unit.PERCENT)));
        }

        private Fact noise() {
            return new Fact(
                    SPEECH.say("plan.noise"),
                    SPEECH.say(
                            "plan.noise.text",
                            "time",
                            NUMBERS.nominal(plan.noise().seconds(), Unit.SECOND),
                            "rate",
                            Long.toString(Math.round(plan.noise().rate()))));
        }

        private Fact sweep() {
            return new Fact(
                    SPEECH.say("plan.sweep"),
                    SPEECH.say(
                            "plan.sweep.text",
                            "time",
                            NUMBERS.nominal(plan.sweep().seconds(), Unit.SECOND),
                            "rate",
                            Long.toString(Math.round(plan.sweep().rate()))));
        }

        private String devices() {
            String named = sheet.clipper().stream()
                    .flatMap(c -> c.pairs().values().stream())
                    .flatMap(p -> Stream.of(p.up(), p.down()))
                    .map(Leg::devices)
                    .flatMap(List::stream)
                    .distinct()
                    .collect(Collectors.joining(", "));
            return named.isEmpty() ? SPEECH.say("plan.devices.any") : named;
        }

        private List<CaptureLine> captures() {
            List<CaptureLine> lines = new ArrayList<>();
            for (double gain : plan.gains()) {
                boolean stop = gain == 0 || gain == HUNDRED;
                lines.add(CaptureLine.of(
                        SPEECH.say("plan.wave", "gain", NUMBERS.nominal(gain, Unit.PERCENT)),
                        stop ? 1 : Math.max(plan.runs(), gain == MIDDLE ? 2 : 1)));
            }
            lines.add(CaptureLine.of(SPEECH.say("plan.quiet"), 1));
            lines.add(CaptureLine.of(SPEECH.say("plan.response"), 1));
            if (!sheet.rails().isEmpty()) {
                String names = sheet.rails().stream().map(Rail::name).collect(Collectors.joining(", "));
                lines.add(CaptureLine.of(SPEECH.say("plan.reading", "names", names), 1));
            }
            return lines;
        }

        private Stream<Reach> reach() {
            return Stream.of(plan.reach(), plan.noise().reach(), plan.sweep().reach())
                    .flatMap(List::stream);
        }

        private ReachLine line(Reach reach) {
            return new ReachLine(
                    name(reach.quantity()),
                    amount(reach.limit(), reach.quantity()),
                    reach.stops().map(s -> amount(s.change(), reach.quantity())).orElse("–"),
                    reach.between()
                            .map(s -> amount(s.change(), reach.quantity()))
                            .orElse("–"));
        }

        private static String name(ItemQuantity quantity) {
            return SPEECH.say("quantity." + quantity.key());
        }

        private static String amount(double value, ItemQuantity quantity) {
            return NUMBERS.rounded(value, Unit.ONE, 2) + " " + quantity.symbol();
        }

        private List<String> remarks() {
            List<String> remarks = new ArrayList<>();
            String missed = reach().filter(r -> !r.sufficient())
                    .map(r -> name(r.quantity()))
                    .collect(Collectors.joining(", "));
            if (!missed.isEmpty()) {
                remarks.add(SPEECH.say("plan.short", "quantities", missed));
            }
            remarks.add(SPEECH.say("plan.margin"));
            return remarks;
        }
    }
}
