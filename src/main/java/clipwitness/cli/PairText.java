package clipwitness.cli;

import clipwitness.measure.junction.NamedDevice;
import clipwitness.report.RankedPair;
import clipwitness.report.Ranking;
import clipwitness.report.RankingWords;

/** What {@code pair} prints for a reader: a row a pair, with a bar as long as its mismatch. */
final class PairText {
    private static final int BAR = 20;
    private static final String HEAD = "pair";

    private PairText() {}

    static String of(Ranking ranking) {
        StringBuilder text = new StringBuilder();
        int width =
                ranking.pairs().stream().mapToInt(p -> name(p).length()).max().orElse(HEAD.length());
        double most =
                ranking.pairs().stream().mapToDouble(PairText::mismatch).max().orElse(0);
        if (!ranking.pairs().isEmpty()) {
            text.append(line(width, HEAD, "mismatch", "at 1 mA", "", "", ""));
        }
        for (RankedPair p : ranking.pairs()) {
            String bar = "#".repeat(most > 0 ? (int) Math.ceil(BAR * mismatch(p) / most) : 0);
            text.append(line(
                    width,
                    name(p),
                    RankingWords.volts(p.pair().mismatch()),
                    RankingWords.volts(p.pair().mismatchAt1mA()),
                    bar,
                    p.forecast().map(RankingWords::forecast).orElse(""),
                    RankingWords.remark(p.pair())));
        }
        if (!ranking.left().isEmpty()) {
            text.append("left over: ").append(String.join(", ", ranking.left())).append('\n');
        }
        for (NamedDevice d : ranking.devices()) {
            if (!d.result().refusal().isEmpty()) {
                text.append(d.name()).append(": ").append(d.result().refusal()).append('\n');
            }
        }
        return text.toString();
    }

    private static String name(RankedPair pair) {
        return String.join(" + ", pair.pair().devices());
    }

    private static double mismatch(RankedPair pair) {
        return pair.pair().mismatch().value().orElse(0);
    }

    private static String line(
            int width, String name, String rms, String at, String bar, String forecast, String remark) {
        StringBuilder line = new StringBuilder();
        line.append(padded(name, width))
                .append("  ")
                .append(padded(rms, 14))
                .append("  ")
                .append(padded(at, 14));
        line.append("  ").append(padded(bar, BAR));
        line.append(forecast.isEmpty() ? "" : "  " + forecast).append(remark.isEmpty() ? "" : "  " + remark);
        return line.toString().stripTrailing() + "\n";
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
