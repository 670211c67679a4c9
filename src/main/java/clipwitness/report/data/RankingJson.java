package clipwitness.report.data;

import java.nio.charset.StandardCharsets;

/** A ranking as JSON. */
public final class RankingJson {
    private RankingJson() {}

    /** The object that {@code pair --json} prints. */
    public static String text(Ranking ranking) {
        byte[] bytes = JsonText.bytes(json -> json.object(() -> {
            new DevicesJson(json)
                    .pairs(ranking.pairs().stream().map(RankedPair::pair).toList());
            json.texts("left", ranking.left());
        }));
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
