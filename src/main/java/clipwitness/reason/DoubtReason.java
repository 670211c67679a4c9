package clipwitness.reason;

import java.util.List;
import java.util.Locale;

/** Why a capture is doubted: the doubt's code, and what exactly raised it. */
public enum DoubtReason implements ReasonCode {
    /** Samples are missing from a record. */
    MISSING_SAMPLES(DoubtCode.MISSING_SAMPLES, "missing", "all", "share"),
    /** Cells of a column are empty. */
    MISSING_SAMPLES_CELLS(DoubtCode.MISSING_SAMPLES, "channel", "missing", "all", "share"),
    /** A column is empty. */
    MISSING_SAMPLES_ALL(DoubtCode.MISSING_SAMPLES, "channel"),
    /** A sound file was cut. */
    MISSING_SAMPLES_SOUND(DoubtCode.MISSING_SAMPLES, "held", "promised"),
    /** The rows end before the number of samples that the preamble states. */
    MISSING_SAMPLES_END(DoubtCode.MISSING_SAMPLES, "promised", "held"),
    /** Nothing repeats. */
    NO_FUNDAMENTAL(DoubtCode.NO_FUNDAMENTAL),
    /** No line where one is expected. */
    NO_FUNDAMENTAL_NEAR(DoubtCode.NO_FUNDAMENTAL, "frequency"),
    /** No line where one is expected, but another. */
    NO_FUNDAMENTAL_NEAR_BUT(DoubtCode.NO_FUNDAMENTAL, "frequency", "strongest"),
    /** More noise than wave. */
    NO_FUNDAMENTAL_IN_NOISE(DoubtCode.NO_FUNDAMENTAL),
    /** A short record. */
    FEW_PERIODS(DoubtCode.FEW_PERIODS, "periods"),
    /** The record is too short to tell its harmonics from another frequency. */
    TOO_FEW_PERIODS(DoubtCode.FEW_PERIODS, "periods"),
    /** Few samples a period. */
    UNDERSAMPLED(DoubtCode.UNDERSAMPLED, "samples"),
    /** Harmonics above those counted. */
    UNDERSAMPLED_HARMONICS(DoubtCode.UNDERSAMPLED, "order", "share"),
    /** The converter was at its end. */
    OVER_RANGE(DoubtCode.OVER_RANGE, "longest", "side"),
    /** Noise vanishes at the extreme. */
    OVER_RANGE_SILENT(DoubtCode.OVER_RANGE, "longest", "side"),
    /** Samples of noise pile up on the extreme. */
    OVER_RANGE_PILED(DoubtCode.OVER_RANGE, "samples", "side"),
    /** Few codes. */
    LOW_RESOLUTION(DoubtCode.LOW_RESOLUTION, "codes"),
    /** A recording of playing whose samples are all equal. */
    LOW_RESOLUTION_SILENT(DoubtCode.LOW_RESOLUTION),
    /** A recording of playing far below full scale. */
    LOW_RESOLUTION_QUIET(DoubtCode.LOW_RESOLUTION, "decibels"),
    /** Another frequency than the sheet's. */
    WRONG_FREQUENCY(DoubtCode.WRONG_FREQUENCY, "found", "expected"),
    /** Rows equal in all but the file show different waves. */
    REPLICATES_DIFFER(DoubtCode.REPLICATES_DIFFER, "more", "less", "figure", "decibels"),
    /** Rows equal in all but the file look like two channels of one record. */
    REPLICATES_HALVES(DoubtCode.REPLICATES_DIFFER, "input", "output"),
    /** Hum, drift or a beat. */
    SLOW_WAVE(DoubtCode.SLOW_WAVE, "frequency", "amplitude"),
    /** Hum of the mains. */
    SLOW_WAVE_MAINS(DoubtCode.SLOW_WAVE, "frequency", "amplitude"),
    /** A line of the mains between the harmonics. */
    SLOW_WAVE_BETWEEN(DoubtCode.SLOW_WAVE, "frequency", "amplitude"),
    /** A slow wave that moves harmonics. */
    SLOW_WAVE_MOVES(DoubtCode.SLOW_WAVE),
    /** The record is too short for hum. */
    TOO_SHORT_FOR_HUM(DoubtCode.TOO_SHORT_FOR_HUM, "lasts", "needed"),
    /** The mains frequency was taken from the records. */
    MAINS_ASSUMED(DoubtCode.MAINS_ASSUMED, "mains"),
    /** A low-pass was taken off. */
    STRAIGHTENED_LOW(DoubtCode.STRAIGHTENED, "gap", "low"),
    /** A high-pass was taken off. */
    STRAIGHTENED_HIGH(DoubtCode.STRAIGHTENED, "gap", "high"),
    /** Both were taken off. */
    STRAIGHTENED_BOTH(DoubtCode.STRAIGHTENED, "gap", "low", "high"),
    /** The input is distorted. */
    DISTORTED_INPUT(DoubtCode.DISTORTED_INPUT, "thd"),
    /** Smallest and largest values in two columns. */
    REPEATED_TIME_COLUMNS(DoubtCode.REPEATED_TIME, "least", "greatest"),
    /** Detected peaks alone. */
    REPEATED_TIME_PEAKS(DoubtCode.REPEATED_TIME, "channel"),
    /** Smallest and largest values in two rows. */
    REPEATED_TIME_ROWS(DoubtCode.REPEATED_TIME),
    /** Rounded stamps. */
    REPEATED_TIME(DoubtCode.REPEATED_TIME, "repeats", "all", "interval"),
    /** Stamps off an even grid. */
    UNEVEN_TIME(DoubtCode.UNEVEN_TIME, "intervals", "row", "from", "to"),
    /** Stretches without time. */
    UNEVEN_TIME_STRETCHES(DoubtCode.UNEVEN_TIME, "count"),
    /** No unit of time. */
    UNIT_ASSUMED_TIME(DoubtCode.UNIT_ASSUMED),
    /** Heading and preamble name two units of time. */
    UNIT_ASSUMED_TIME_TWICE(DoubtCode.UNIT_ASSUMED, "heading", "preamble"),
    /** A first column without a name. */
    UNIT_ASSUMED_FIRST_COLUMN(DoubtCode.UNIT_ASSUMED),
    /** A first column that the name says little of. */
    UNIT_ASSUMED_CALLED(DoubtCode.UNIT_ASSUMED, "column"),
    /** Units by the names of voltage and current. */
    UNIT_ASSUMED_NAMES(DoubtCode.UNIT_ASSUMED, "channels"),
    /** Two intervals. */
    UNIT_ASSUMED_INTERVAL(DoubtCode.UNIT_ASSUMED, "stated", "source", "own"),
    /** The time stamps advance otherwise than the preamble states. */
    UNIT_ASSUMED_STAMPS(DoubtCode.UNIT_ASSUMED, "stamps", "source", "stated"),
    /** The time stamps leave out samples that the preamble states. */
    UNIT_ASSUMED_THINNED(DoubtCode.UNIT_ASSUMED, "stamps", "source", "stated", "nth"),
    /** Heading and preamble name two units of channels. */
    UNIT_ASSUMED_TWICE(DoubtCode.UNIT_ASSUMED, "channels", "heading", "preamble"),
    /** The names of two channels contradict the order by which the first is the input. */
    UNIT_ASSUMED_ORDER(DoubtCode.UNIT_ASSUMED, "first", "second"),
    /** The stated interval or rate has a mark between its thousands, or a decimal mark. */
    UNIT_ASSUMED_THOUSANDS(DoubtCode.UNIT_ASSUMED, "written", "statement", "interval"),
    /** No unit of the values. */
    UNIT_ASSUMED(DoubtCode.UNIT_ASSUMED, "channels"),
    /** A sound file, and nobody says what full scale is worth. */
    UNIT_ASSUMED_SOUND(DoubtCode.UNIT_ASSUMED, "channels"),
    /** The same of a recording of playing, which needs no volts. */
    UNIT_ASSUMED_LISTENING(DoubtCode.UNIT_ASSUMED),
    /** AC coupled, as audio interfaces are. */
    AC_COUPLED_SOUND(DoubtCode.AC_COUPLED),
    /** AC coupled, as the export says. */
    AC_COUPLED(DoubtCode.AC_COUPLED, "channel"),
    /** AC coupled, as the captures table says. */
    AC_COUPLED_TABLE(DoubtCode.AC_COUPLED),
    /** The knob was set once. */
    NOT_COMPARABLE_SET_ONCE(DoubtCode.NOT_COMPARABLE),
    /** One export for two states. */
    NOT_COMPARABLE_TWO_STATES(DoubtCode.NOT_COMPARABLE, "state", "line"),
    /** One export in two rows. */
    NOT_COMPARABLE_TWO_ROWS(DoubtCode.NOT_COMPARABLE, "line"),
    /** One export for two settings. */
    NOT_COMPARABLE_TWO_SETTINGS(DoubtCode.NOT_COMPARABLE, "line"),
    /** Another temperature. */
    NOT_COMPARABLE_TEMPERATURE(DoubtCode.NOT_COMPARABLE, "kelvin", "state"),
    /** Another coupling or acquisition. */
    NOT_COMPARABLE_INSTRUMENT(DoubtCode.NOT_COMPARABLE, "what", "here", "there", "state"),
    /** A response needs its input. */
    NOT_COMPARABLE_RESPONSE_INPUT(DoubtCode.NOT_COMPARABLE),
    /** Gaps in a sweep. */
    NOT_COMPARABLE_RESPONSE_GAPS(DoubtCode.NOT_COMPARABLE),
    /** A sweep that shows nothing. */
    NOT_COMPARABLE_RESPONSE_NONE(DoubtCode.NOT_COMPARABLE),
    /** A steady sine that was clipped. */
    RESPONSE_CLIPPED(DoubtCode.NOT_COMPARABLE, "thd"),
    /** A sweep whose output holds more than the input explains. */
    RESPONSE_NOT_LINEAR(DoubtCode.NOT_COMPARABLE, "share"),
    /** A sweep that is stronger than the onset of clipping. */
    RESPONSE_BEYOND_ONSET(DoubtCode.NOT_COMPARABLE, "peak", "onset"),
    /** The input differs between two captures. */
    STIMULUS_CHANGED(DoubtCode.STIMULUS_CHANGED, "decibels", "direction", "state"),
    /** The input differs from the sheet. */
    STIMULUS_CHANGED_SHEET(DoubtCode.STIMULUS_CHANGED, "found", "stated");

    private final DoubtCode doubt;
    private final String holes;

    DoubtReason(DoubtCode doubt, String... holes) {
        this.doubt = doubt;
        this.holes = Phrase.joined(holes);
    }

    /** Which doubt it raises. */
    public DoubtCode doubt() {
        return doubt;
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }

    /** Name in the results: that of the doubt. */
    @Override
    public String code() {
        return doubt.code();
    }

    /** Name of its line: each way in which a doubt is raised has its own. */
    @Override
    public String key() {
        return "doubt." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
