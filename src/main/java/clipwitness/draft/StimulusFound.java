package clipwitness.draft;

import clipwitness.draft.name.Guess;
import clipwitness.draft.name.NameFacts;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The stimulus that most waves have, and where single captures differ from it.
 *
 * @param frequency in Hz
 * @param level     as the sheet writes it
 */
public record StimulusFound(Optional<Guess<Double>> frequency, Optional<Guess<String>> level) {
    private static final double SAME_FREQUENCY = 1.015;
    /** A level set twice by eye, or by a generator's stepped attenuator. */
    private static final double SAME_LEVEL = 1.08;

    private static final double PEAK_PER_RMS = Math.sqrt(2);
    private static final double SAID_WELL = 0.06;
    private static final Pattern LEVEL = Pattern.compile("([\\d.]+) (µV|mV|V)( pp| rms)?");

    /** Frequency of most tones, of files whose name says neither noise nor response; of all where there are no others. */
    static OptionalDouble frequency(List<DraftedExport> sources, List<NameFacts> facts) {
        List<Double> waves = new java.util.ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            if (facts.get(i).kind().isEmpty()) {
                Kinds.tones(sources.get(i).content()).findFirst().ifPresent(waves::add);
            }
        }
        return Clusters.largest(waves, SAME_FREQUENCY);
    }

    /** The stimulus of these rows' waves. */
    static StimulusFound of(List<DraftRow> rows) {
        List<DraftRow> waves = rows.stream()
                .filter(r -> r.kind().value() == DraftKind.WAVEFORM)
                .toList();
        List<Double> tones =
                waves.stream().flatMap(r -> r.tone().stream().boxed()).toList();
        OptionalDouble frequency = Clusters.largest(tones, SAME_FREQUENCY);
        List<DraftRow> driven = waves.isEmpty() ? rows : waves;
        List<Double> levels =
                driven.stream().map(StimulusFound::peak).filter(l -> l > 0).toList();
        OptionalDouble level = Clusters.largest(levels, SAME_LEVEL);
        return new StimulusFound(
                frequency.isPresent()
                        ? Optional.of(new Guess<>(Rounded.nearby(frequency.getAsDouble()), "measured in the captures"))
                        : Optional.empty(),
                level.isPresent() ? Optional.of(said(driven, level.getAsDouble())) : Optional.empty());
    }

    private static Guess<String> said(List<DraftRow> waves, double peak) {
        return waves.stream()
                .filter(w -> isLike(peak(w), peak, SAME_LEVEL))
                .map(w -> level(w).orElse(null))
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow();
    }

    /** The row with frequency and level, where they are not those of the sheet. */
    DraftRow applied(DraftRow row) {
        DraftKind kind = row.kind().value();
        if (kind != DraftKind.WAVEFORM && kind != DraftKind.RESPONSE) {
            return row.under(Optional.empty(), Optional.empty());
        }
        Optional<Guess<Double>> tone = row.tone().isPresent()
                ? Optional.of(new Guess<>(Rounded.nearby(row.tone().getAsDouble()), "measured"))
                : row.source().content().type() == Content.Type.UNSTATED
                        ? row.facts().frequency()
                        : Optional.empty();
        boolean same = kind == DraftKind.WAVEFORM
                && tone.isPresent()
                && frequency
                        .filter(f -> isLike(f.value(), tone.get().value(), SAME_FREQUENCY))
                        .isPresent();
        Optional<Guess<String>> own = kind == DraftKind.RESPONSE && tone.isEmpty() ? Optional.empty() : level(row);
        boolean sameLevel = level.isPresent()
                && own.isPresent()
                && isLike(peak(level.get().value()), peak(own.get().value()), SAME_LEVEL);
        return row.under(same ? Optional.empty() : tone, sameLevel ? Optional.empty() : own);
    }

    private static boolean isLike(double a, double b, double ratio) {
        return Math.max(a, b) < ratio * Math.min(a, b);
    }

    private static double peak(DraftRow row) {
        return level(row).map(g -> peak(g.value())).orElse(0.0);
    }

    /** The level of a row: as its name says, in peak, rms or peak to peak, whichever the record shows; else as measured. */
    private static Optional<Guess<String>> level(DraftRow row) {
        OptionalDouble heard =
                ChannelUses.input(row).map(Content.Heard::amplitude).orElse(OptionalDouble.empty());
        Optional<Guess<String>> name = row.facts().level();
        if (heard.isEmpty()) {
            return name;
        }
        if (name.isPresent()
                && !name.get().value().endsWith("p")
                && !name.get().value().endsWith("s")) {
            double ratio = heard.getAsDouble() / peak(name.get().value());
            String suffix = isNear(ratio, 0.5) ? " pp" : isNear(ratio, PEAK_PER_RMS) ? " rms" : "";
            return Optional.of(
                    new Guess<>(name.get().value() + suffix, name.get().reason()));
        }
        return name.isPresent()
                ? name
                : Optional.of(new Guess<>(
                        Rounded.level(heard.getAsDouble()), "peak amplitude, measured in the input's channel"));
    }

    /** What to ask of a row whose name and whose input channel state different levels. */
    static Optional<String> question(DraftRow row) {
        OptionalDouble heard =
                ChannelUses.input(row).map(Content.Heard::amplitude).orElse(OptionalDouble.empty());
        Optional<String> said = row.facts().level().isPresent() ? level(row).map(Guess::value) : Optional.empty();
        boolean apart = heard.isPresent() && said.isPresent() && !isNear(heard.getAsDouble() / peak(said.get()), 1);
        return apart
                ? Optional.of("its name says " + said.get() + ", its input channel holds "
                        + Rounded.level(heard.getAsDouble())
                        + " peak. Which is right? A probe's factor goes into column input-probe")
                : Optional.empty();
    }

    private static boolean isNear(double ratio, double expected) {
        return Math.abs(ratio / expected - 1) < SAID_WELL;
    }

    /** Peak amplitude in V of a level as the table writes it. */
    static double peak(String level) {
        Matcher m = LEVEL.matcher(level);
        if (!m.matches()) {
            throw new IllegalArgumentException("no level: " + level);
        }
        double unit = m.group(2).equals("V") ? 1 : m.group(2).equals("mV") ? 1e-3 : 1e-6;
        double perPeak = m.group(3) == null ? 1 : m.group(3).equals(" pp") ? 0.5 : PEAK_PER_RMS;
        return Double.parseDouble(m.group(1)) * unit * perPeak;
    }
}
