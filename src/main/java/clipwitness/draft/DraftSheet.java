package clipwitness.draft;

import clipwitness.draft.name.Guess;
import clipwitness.job.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The job sheet of a draft: what is known as keys, what is not as lines that are commented out, with the question. */
public final class DraftSheet {
    private static final String QUESTION = "  # QUESTION: ";

    private final Draft draft;
    private final List<String> lines = new ArrayList<>();

    private DraftSheet(Draft draft) {
        this.draft = draft;
    }

    /** The text of the sheet. */
    public static String of(Draft draft) {
        DraftSheet text = new DraftSheet(draft);
        text.head();
        text.stimulus();
        text.settings();
        text.states();
        text.rest();
        text.photos();
        return String.join("\n", text.lines) + "\n";
    }

    private void add(String line) {
        lines.add(line);
    }

    private void head() {
        add(
                "# Drafted from the names and the contents of the exports. A line with # before it says nothing yet: take the # away where");
        add(
                "# it applies. Lines with QUESTION want an answer. What a key means is in the manual, page \"the job sheet\".");
        add("report:");
        add("  number: " + yaml(draft.number().value()) + "  # "
                + draft.number().reason());
        add("  # title: \"\"" + QUESTION + "what is the report about?");
        add("  date: " + draft.date().value() + "  # " + draft.date().reason() + "; write the day of the report");
        add("  # received: 2026-01-31");
        add("  # template: customer");
        add("# shop: {name: \"\", contact: \"\", technician: \"\"}");
        add("# customer: \"\"");
        add("# unit: {name: \"\", maker: \"\", serial: \"\", supply: 9 V}");
        add("# work: |");
        add("#   What was done, in your words.");
        add("# bench: {temperature: 21 °C, knob-repeatability: 1 %, vertical-accuracy: 3 %}" + QUESTION
                + "how warm was the bench? Without an answer 23 °C within 3 K is taken");
    }

    private void stimulus() {
        StimulusFound found = draft.stimulus();
        String frequency = found.frequency()
                .map(f -> ", frequency: " + Rounded.frequency(f.value()))
                .orElse("");
        String level = found.level().map(l -> ", level: " + l.value()).orElse("");
        if (frequency.isEmpty() && level.isEmpty()) {
            add("# stimulus: {shape: sine, frequency: 1 kHz, level: 100 mV}" + QUESTION
                    + "what came from the generator? The level is the peak amplitude, unless rms or pp follows");
            return;
        }
        String reason = found.frequency().map(Guess::reason).orElse("")
                + found.level().map(l -> "; level: " + l.reason()).orElse("");
        add("stimulus: {shape: sine" + frequency + level + "}  # " + reason);
        if (level.isEmpty()) {
            add("# stimulus: {shape: sine" + frequency + ", level: 100 mV}" + QUESTION
                    + "which level had the generator? Peak amplitude, unless rms or pp follows");
        }
    }

    private void settings() {
        if (draft.settings().isEmpty()) {
            add("# settings: {noon: \"all other controls at noon\"}" + QUESTION
                    + "where did all other controls and switches stand?");
            return;
        }
        add("settings:" + QUESTION + "where did all other controls and switches stand?");
        for (Map.Entry<String, String> setting : draft.settings().entrySet()) {
            add("  " + yaml(setting.getKey()) + ": " + yaml(setting.getValue()));
        }
    }

    private void states() {
        boolean any = draft.states().stream().anyMatch(s -> s.role().isPresent());
        add((any ? "" : "# ") + "states:");
        draft.states().forEach(this::state);
        boolean before = draft.states().stream()
                .anyMatch(s -> s.role().filter(r -> r.value() == Role.BEFORE).isPresent());
        if (!before) {
            add(QUESTION.substring(2) + "which state is the one before the work? Each job needs one with role: before");
            add("  # received: {label: \"As received\", role: before}");
        }
    }

    private void state(DraftState state) {
        if (state.role().isEmpty()) {
            add("  # QUESTION: is " + state.name()
                    + " the state before, must it still be what it was, is it meant to differ,"
                    + " or only shown? Take the # away before one line");
            for (Role role : Role.values()) {
                add("  # " + line(state, role));
            }
            return;
        }
        add("  " + line(state, state.role().get().value()) + "  # "
                + state.role().get().reason());
        state.doubt().ifPresent(d -> add("  # QUESTION: " + d));
    }

    private static String line(DraftState state, Role role) {
        String against = role == Role.BEFORE || role == Role.SHOWN
                ? ""
                : state.against().map(a -> ", against: " + yaml(a)).orElse("");
        return name(state.name()) + ": {label: " + yaml(state.label()) + ", role: " + role.code() + against + "}";
    }

    /** A name of a state as a key: words that YAML reads as something else stand in quotes. */
    private static String name(String name) {
        return name.matches("(?i)y|n|yes|no|on|off|true|false|null|[\\d.+-].*") ? yaml(name) : name;
    }

    private void rest() {
        add(
                "# limits: {level: 0.5 dB, thd: 1 dB, asymmetry: 2, crest-factor: 0.3 dB, null-depth: -32 dB, noise: 2 dB, hum: 3 dB, response: 0.5 dB, rail: 2 %}");
        add("# rails:" + QUESTION + "what did the meter show in each state?");
        add("#   - {name: \"supply\", expected: 9 V" + ofEachState(s -> "9.0 V") + "}");
        add("# clipper:" + QUESTION + "how do the clippers stand? The manual draws both topologies");
        add("#   topology: shunt");
        add("#   source-resistance: 1 kΩ");
        String pair = devices();
        if (!pair.isEmpty()) {
            add("#   pairs: {" + ofEachState(s -> pair).replaceFirst("^, ", "") + "}" + QUESTION
                    + "which devices are in each state? The first leg conducts on positive node voltage");
        }
    }

    private String ofEachState(Function<DraftState, String> text) {
        return draft.states().stream()
                .map(s -> ", " + name(s.name()) + ": " + text.apply(s))
                .collect(Collectors.joining());
    }

    /** The first two traced devices, as a pair. */
    private String devices() {
        List<String> devices = draft.rows().stream()
                .flatMap(r -> r.facts().device().stream())
                .map(d -> yaml(d.value()))
                .distinct()
                .limit(2)
                .toList();
        return devices.size() < 2 || draft.states().isEmpty() ? "" : "[" + String.join(", ", devices) + "]";
    }

    private void photos() {
        if (draft.pictures().isEmpty()) {
            return;
        }
        add("# photos:" + QUESTION
                + "which pictures belong into the report? Take the # away before them, and before this line");
        draft.pictures().forEach(p -> add("#   - {file: " + yaml(p) + ", caption: " + yaml(caption(p)) + "}"));
    }

    private static String caption(String path) {
        return path.substring(path.lastIndexOf('/') + 1)
                .replaceAll("\\.[^.]*$", "")
                .replace('_', ' ')
                .strip();
    }

    /** A text in double quotes. */
    static String yaml(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (Character.isISOControl(c) || c == 0x2028 || c == 0x2029 || c == 0xfeff) {
                quoted.append(String.format(java.util.Locale.ROOT, "\\u%04x", c));
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
