package clipwitness.reason;

import java.util.List;

/** How the layout of an export was read, and what that rests on. */
public enum LayoutRemark implements RemarkCode {
    /** Encoding that a byte-order mark tells. */
    ENCODING_BY_MARK("encoding"),
    /** Two bytes a character, the lower first. */
    ENCODING_SECOND_ZERO,
    /** Two bytes a character, the higher first. */
    ENCODING_FIRST_ZERO,
    /** Seven bits. */
    ENCODING_ASCII,
    /** UTF-8 by its sequences. */
    ENCODING_SEQUENCES,
    /** An 8-bit page. */
    ENCODING_EIGHT_BIT,
    /** How rows were read. */
    ROWS("dialect", "rows", "looked", "numbers"),
    /** How rows of one number were read. */
    ROWS_OF_ONE("dialect", "rows", "looked"),
    /** Cells with a decimal point. */
    CELLS_POINT("delimiter"),
    /** Cells with a decimal comma. */
    CELLS_COMMA("delimiter"),
    /** The same with more than a number in a cell. */
    CELLS_POINT_ANNOTATED("delimiter"),
    /** The same with more than a number in a cell. */
    CELLS_COMMA_ANNOTATED("delimiter"),
    /** Cells separated by tabs. */
    DELIMITER_TAB,
    /** Cells separated by semicolons. */
    DELIMITER_SEMICOLON,
    /** Cells separated by commas. */
    DELIMITER_COMMA,
    /** Cells separated by blanks. */
    DELIMITER_BLANKS,
    /** Cells separated by a mixture of commas, semicolons, tabs and blanks. */
    DELIMITER_MIXED,
    /** Where the samples begin. */
    SAMPLES_FROM("line"),
    /** Where the names stand. */
    NAMES_ON("line"),
    /** Where the units stand. */
    UNITS_ON("line"),
    /** A line between the names and the rows that was not understood. */
    LINE_BETWEEN("line", "text"),
    /** Names and units in one row. */
    JOINED_HEADER("line", "columns"),
    /** Columns that are no voltage or current. */
    LEFT_OUT_UNITS("columns"),
    /** A time of day and its fraction in two columns. */
    CLOCK_AND_FRACTION("time", "fraction"),
    /** A column of numbers that never change, beside clocked readings. */
    LEFT_OUT_SETTING("column"),
    /** Columns of extremes beside samples. */
    LEFT_OUT_EXTREMES("columns"),
    /** A first column without a name that is time. */
    FIRST_COLUMN_AGREES,
    /** The same without an interval in the preamble. */
    FIRST_COLUMN_EVEN,
    /** A second column of the same time. */
    COLUMN_REPEATS("column"),
    /** A second column of time. */
    COLUMN_ADVANCES("column"),
    /** A column over frequency. */
    COLUMN_OF_SPECTRUM("column"),
    /** A row that the end of the file cuts. */
    LAST_ROW_CUT("line"),
    /** Rows that grow shorter. */
    CHANNEL_ENDS("line"),
    /** Rows without values above the samples. */
    BARE_ROWS_FIRST("rows"),
    /** Rows without values below the samples. */
    BARE_ROWS_LAST("rows"),
    /** Text below the samples. */
    TEXT_BELOW("lines"),
    /** Headers among the rows. */
    HEADER_AGAIN("sweeps"),
    /** A statement of the preamble. */
    STATEMENT("key", "line"),
    /** A unit of time that the interval tells. */
    TIME_UNIT_BY_INTERVAL("unit", "statement"),
    /** No unit of time. */
    TIME_IN_SECONDS,
    /** An interval from the preamble. */
    INTERVAL_STATED("interval", "statement"),
    /** The same with samples left out. */
    INTERVAL_OF_INDEX("interval", "statement", "step"),
    /** An interval from the user. */
    INTERVAL_OF_USER("interval"),
    /** The same where there are time stamps. */
    INTERVAL_OVER_STAMPS("interval", "own"),
    /** The same where the preamble states one. */
    INTERVAL_OVER_STATEMENT("interval", "statement", "own"),
    /** An interval from the stamps. */
    INTERVAL_OF_STAMPS("interval", "stamps"),
    /** The same against the preamble. */
    INTERVAL_CONTRADICTED("interval", "stamps", "statement", "own"),
    /** Stamps and preamble agree. */
    INTERVAL_OF_PREAMBLE("interval", "stamps", "statement"),
    /** The same, the stamps being finer. */
    INTERVAL_OF_LINE("interval", "stamps", "statement"),
    /** A sound file of whole numbers. */
    SOUND_PCM("bits", "channels"),
    /** The same with one channel. */
    SOUND_PCM_OF_ONE("bits"),
    /** A sound file of floating-point numbers. */
    SOUND_FLOAT("bits", "channels"),
    /** The same with one channel. */
    SOUND_FLOAT_OF_ONE("bits"),
    /** Its sample rate. */
    SOUND_RATE("rate"),
    /** What its full scale is worth. */
    SOUND_SCALE("scale", "unit"),
    /** An envelope. */
    TWO_ROWS_A_STAMP,
    /** A curve by its names. */
    CURVE_BY_NAMES,
    /** Sweeps below one another. */
    SWEEPS("voltage", "sweeps"),
    /** Columns of a curve that were left. */
    CURVE_COLUMNS("voltage", "current", "unused"),
    /** One column of a curve that was left. */
    CURVE_COLUMN("voltage", "current", "unused"),
    /** A unit from the heading. */
    UNIT_OF_HEADING("channel", "unit"),
    /** A unit from the preamble. */
    UNIT_OF_PREAMBLE("channel", "unit"),
    /** A factor from the preamble. */
    SCALE_FACTOR("channel", "factor"),
    /** Counts with a scale. */
    COUNTS_SCALED("channel", "increment", "reference"),
    /** Counts without one. */
    COUNTS("channel", "unit"),
    /** A unit from the user. */
    UNIT_OF_USER("channel", "unit"),
    /** The same with a scale. */
    SCALE_OF_USER("channel", "unit", "scale"),
    /** A unit from the user against the file. */
    UNIT_OVER_FILE("channel", "unit"),
    /** The same with a scale. */
    SCALE_OVER_FILE("channel", "unit", "scale");

    private final String holes;

    LayoutRemark(String... holes) {
        this.holes = Phrase.joined(holes);
    }

    @Override
    public List<String> holes() {
        return Phrase.parted(holes);
    }

    @Override
    public String key() {
        return "layout." + code();
    }
}
