package clipwitness.cli;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.report.data.Look;
import clipwitness.words.Speech;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@code look} prints for a reader. */
final class LookText {
    private static final int DIGITS = 4;
    private static final int DIGITS_OF_BOUND = 2;
    private static final NumberText NUMBERS = NumberText.in("en");

    private LookText() {}

    /** A paragraph: what the file holds, each channel, every doubt, how the layout was read, and whether it is fit to measure. */
    static String of(Look look) {
        StringBuilder text = new StringBuilder();
        text.append(look.export().file())
                .append(": ")
                .append(kind(look.export()))
                .append('\n');
        int width = look.channels().stream()
                .mapToInt(c -> c.channel().name().length())
                .max()
                .orElse(0);
        for (Look.ChannelLook c : look.channels()) {
            text.append("  ").append(channel(c, width)).append('\n');
        }
        for (Doubt d : look.doubts()) {
            text.append("  ")
                    .append(d.severity().code())
                    .append(" ")
                    .append(d.code().code())
                    .append(": ")
                    .append(Speech.ENGLISH.text(d))
                    .append('\n');
        }
        text.append("  read so:\n");
        look.export()
                .evidence()
                .forEach(e -> text.append("    ").append(Speech.ENGLISH.text(e)).append('\n'));
        return text.append("  ").append(FitSentence.of(look)).append('\n').toString();
    }

    private static String kind(Export export) {
        if (export instanceof TimeRecord record) {
            return "record over time, " + record.size() + " samples, one every "
                    + NUMBERS.rounded(record.sampleInterval(), Unit.SECOND, DIGITS + 2) + " ("
                    + NUMBERS.rounded(record.sampleRate(), Unit.HERTZ, DIGITS) + "), "
                    + NUMBERS.rounded(record.size() * record.sampleInterval(), Unit.SECOND, DIGITS) + " long";
        }
        return "curve of current against voltage, " + export.size() + " points";
    }

    private static String channel(Look.ChannelLook look, int width) {
        Channel c = look.channel();
        List<String> parts = new ArrayList<>();
        parts.add(c.name() + " ".repeat(width - c.name().length()));
        parts.add(range(c));
        figure(look, WaveformQuantity.FREQUENCY).ifPresent(parts::add);
        figure(look, WaveformQuantity.THD).ifPresent(t -> parts.add("THD " + t));
        return String.join("   ", parts);
    }

    private static String range(Channel channel) {
        if (channel.samples().gaps() == channel.samples().size()) {
            return "no values";
        }
        Unit unit = channel.unit().orElse(Unit.ONE);
        return NUMBERS.rounded(channel.samples().minimum(), unit, DIGITS) + " to "
                + NUMBERS.rounded(channel.samples().maximum(), unit, DIGITS)
                + (channel.unit().isPresent() ? "" : " (unit not known)");
    }

    private static Optional<String> figure(Look.ChannelLook look, WaveformQuantity quantity) {
        return look.waveform()
                .map(w -> w.get(quantity))
                .flatMap(Measured::asValue)
                .map(v -> v.isUpperBound()
                        ? "below " + NUMBERS.rounded(v.shown(), v.unit(), DIGITS_OF_BOUND)
                        : NUMBERS.rounded(v.shown(), v.unit(), DIGITS));
    }
}
