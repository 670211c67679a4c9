package clipwitness.cli;

import clipwitness.report.RankingWords;
import clipwitness.report.data.RankedPair;
import clipwitness.report.data.Ranking;
import java.util.ArrayList;
import java.util.List;

/** What {@code pair} prints for a reader: a row a pair, with a bar as long as its mismatch. */
final class PairText {
    private static final int BAR = 20;

    private PairText() {}

    static String of(Ranking ranking) {
        StringBuilder text = new StringBuilder();
        if (!ranking.pairs().isEmpty()) {
            text.append(TextTable.of(rows(ranking)));
        }
        if (!ranking.left().isEmpty()) {
            text.append("left over: ").append(String.join(", ", ranking.left())).append('\n');
        }
        RankingWords.refusals(ranking).forEach(r -> text.append(r).append('\n'));
        String purpose = RankingWords.purpose(ranking);
        text.append(purpose).append(purpose.isEmpty() ? "" : "\n");
        return text.toString();
    }

    private static List<List<String>> rows(Ranking ranking) {
        boolean forecast = ranking.pairs().stream().anyMatch(p -> p.forecast().isPresent());
        boolean remark = ranking.pairs().stream().anyMatch(p -> p.pair().tracedApart());
        double most =
                ranking.pairs().stream().mapToDouble(PairText::mismatch).max().orElse(0);
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("Pair", "Mismatch, rms", "At 1 mA", "", forecast ? "Clips at 1 mA" : "", remark ? "Remark" : ""));
        for (RankedPair p : ranking.pairs()) {
            rows.add(row(
                    RankingWords.name(p),
                    RankingWords.volts(p.pair().mismatch()),
                    RankingWords.volts(p.pair().mismatchAt1mA()),
                    "#".repeat(most > 0 ? (int) Math.ceil(BAR * (mismatch(p) / most)) : 0),
                    RankingWords.forecast(p.forecast()),
                    RankingWords.remark(p.pair())));
        }
        return rows;
    }

    private static List<String> row(String... cells) {
        return List.of(cells);
    }

    private static double mismatch(RankedPair pair) {
        return pair.pair().mismatch().value().orElse(0);
    }
}
