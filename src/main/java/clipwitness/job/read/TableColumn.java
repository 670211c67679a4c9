package clipwitness.job.read;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Columns of the captures table. */
enum TableColumn {
    FILE,
    STATE,
    KIND,
    GAIN,
    FREQUENCY,
    LEVEL,
    SETTING,
    RUN,
    INPUT,
    OUTPUT,
    INPUT_FILE,
    INPUT_PROBE,
    OUTPUT_PROBE,
    INTERVAL,
    UNIT,
    SCALE,
    DEVICE,
    TEMPERATURE,
    DATE,
    INSTRUMENT,
    COUPLING,
    ACQUISITION,
    NOTE;

    /** Name in the header row. */
    String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The column of a name, upper and lower case alike. */
    static Optional<TableColumn> of(String name) {
        String folded = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(c -> c.code().equals(folded)).findFirst();
    }

    /** Names of all columns. */
    static List<String> codes() {
        return Arrays.stream(values()).map(TableColumn::code).toList();
    }
}
