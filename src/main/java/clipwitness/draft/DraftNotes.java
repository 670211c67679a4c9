package clipwitness.draft;

import clipwitness.draft.name.Guess;
import java.util.ArrayList;
import java.util.List;

/** Everything that a draft guesses, with its reason, for the terminal. */
public final class DraftNotes {
    private DraftNotes() {}

    /** A line for each export, state and figure of the sheet, then the questions. */
    public static List<String> of(Draft draft) {
        List<String> lines = new ArrayList<>();
        draft.rows().forEach(r -> lines.add(row(r)));
        lines.add("");
        draft.states().forEach(s -> lines.add(state(s)));
        lines.add("number " + draft.number().value() + " (" + draft.number().reason() + ")");
        lines.add("date " + draft.date().value() + " (" + draft.date().reason() + ")");
        draft.stimulus()
                .frequency()
                .ifPresent(f -> lines.add("stimulus " + Rounded.frequency(f.value()) + " (" + f.reason() + ")"));
        draft.stimulus().level().ifPresent(l -> lines.add("level " + l.value() + " (" + l.reason() + ")"));
        if (!draft.pictures().isEmpty()) {
            lines.add("pictures, commented out on the sheet: " + Listed.of(draft.pictures()));
        }
        if (!draft.questions().isEmpty()) {
            lines.add("");
            lines.add("To be answered:");
            draft.questions().forEach(q -> lines.add("- " + q));
        }
        return lines;
    }

    private static String row(DraftRow row) {
        List<String> parts = new ArrayList<>();
        parts.add(row.kind().value().code() + " (" + row.kind().reason() + ")");
        row.facts().state().ifPresent(s -> parts.add("state " + DraftStates.name(s.value()) + why(s)));
        if (row.lacksState()) {
            parts.add("state not known");
        }
        row.facts().gain().ifPresent(g -> parts.add("gain " + Rounded.plain(g.value()) + " %" + why(g)));
        row.frequency().ifPresent(f -> parts.add("frequency " + Rounded.frequency(f.value()) + why(f)));
        row.level().ifPresent(l -> parts.add("level " + l.value() + why(l)));
        if (row.kind().value() != DraftKind.JUNCTION) {
            row.facts().setting().ifPresent(s -> parts.add("setting " + s.value() + why(s)));
        }
        row.facts().run().ifPresent(r -> parts.add("run " + r.value() + why(r)));
        row.facts().device().ifPresent(d -> parts.add("device " + d.value() + why(d)));
        row.channels()
                .ifPresent(c -> parts.add(
                        "input " + c.value().input() + ", output " + c.value().output() + why(c)));
        row.inputFile().ifPresent(i -> parts.add("input in " + i.value().path() + why(i)));
        return row.source().path() + ": " + String.join("; ", parts);
    }

    private static String why(Guess<?> guess) {
        return " (" + guess.reason() + ")";
    }

    private static String state(DraftState state) {
        return "state " + state.name() + ": "
                + state.role()
                        .map(r -> "role " + r.value().code() + " (" + r.reason() + ")")
                        .orElse("role not known");
    }
}
