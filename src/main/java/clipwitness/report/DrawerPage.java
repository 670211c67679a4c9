package clipwitness.report;

import clipwitness.figure.canvas.Figure;
import clipwitness.report.data.RankedPair;
import clipwitness.report.data.Ranking;
import clipwitness.report.model.Fact;
import java.util.ArrayList;
import java.util.List;

/**
 * What the template of the drawer's sheet receives: finished texts, empty where there is nothing to say.
 *
 * @param job           number of the job
 * @param facts         what holds for all pairs
 * @param figureTitle   title of the figure of all curves
 * @param figureFinding what it shows
 * @param pairs         pairs that are shown
 * @param more          how many more there are
 * @param left          devices without a partner
 * @param refusals      why devices are no junctions
 * @param software      program and version
 * @param digest        digest of the exports
 */
record DrawerPage(
        String job,
        List<Fact> facts,
        String figureTitle,
        String figureFinding,
        List<PairLine> pairs,
        String more,
        String left,
        List<String> refusals,
        String software,
        String digest) {
    private static final int MOST_PAIRS = 24;

    /**
     * A pair.
     *
     * @param name             its devices
     * @param mismatch         rms mismatch
     * @param atOneMilliampere mismatch at 1 mA
     * @param forecast         what it would clip at
     * @param remark           a line under it
     */
    record PairLine(String name, String mismatch, String atOneMilliampere, String forecast, String remark) {
        static PairLine of(RankedPair ranked) {
            return new PairLine(
                    RankingWords.name(ranked),
                    RankingWords.volts(ranked.pair().mismatch()),
                    RankingWords.volts(ranked.pair().mismatchAt1mA()),
                    RankingWords.forecast(ranked.forecast()),
                    RankingWords.remark(ranked.pair()));
        }
    }

    static DrawerPage of(Ranking ranking, Figure figure, String software) {
        int more = ranking.pairs().size() - MOST_PAIRS;
        return new DrawerPage(
                ranking.purpose().map(Ranking.Purpose::job).orElse(""),
                facts(ranking),
                figure.title(),
                figure.finding(),
                ranking.pairs().stream().limit(MOST_PAIRS).map(PairLine::of).toList(),
                more > 0 ? Integer.toString(more) : "",
                String.join(", ", ranking.left()),
                RankingWords.refusals(ranking),
                software,
                ranking.digest());
    }

    private static List<Fact> facts(Ranking ranking) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Temperature of the traces", RankingWords.temperature(ranking.temperature())));
        String purpose = RankingWords.purpose(ranking);
        if (!purpose.isEmpty()) {
            facts.add(new Fact("Clip levels", purpose));
        }
        return facts;
    }
}
