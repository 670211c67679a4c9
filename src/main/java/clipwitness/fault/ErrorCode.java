package clipwitness.fault;

import java.util.Locale;

/**
 * Kinds of errors. Each message ends in the code of its kind, in brackets; the manual has cause and remedy of each, {@code src/site/markdown/codes.md}.
 * A kind is what a user does about it: messages with one remedy share a code.
 */
public enum ErrorCode {
    /** The command line is not understood. */
    WRONG_CALL,
    /** The locale of the terminal, or an option of Java, keeps names or texts from being read. */
    WRONG_LOCALE,

    /** Nothing has this name. */
    NO_SUCH_FILE,
    /** It is there and may not be read, or the disk does not give it. */
    UNREADABLE,
    /** A folder, a pipe or something else that is no ordinary file. */
    NOT_A_FILE,
    /** A path or a link leads out of the folder that it has to stay in. */
    OUTSIDE_FOLDER,
    /** Changed or lost while it was read. */
    CHANGED_MEANWHILE,
    /** Empty, or without anything to be read. */
    EMPTY,
    /** Cut off, or bytes of it are wrong. */
    DAMAGED,
    /** Does not fit the memory. */
    OUT_OF_MEMORY,
    /** Larger, longer or more deeply nested than anything that belongs there. */
    TOO_LARGE,

    /** No export: a picture, a spreadsheet, a text. */
    NOT_AN_EXPORT,
    /** A table over something else than time or voltage. */
    OTHER_TABLE,
    /** A sound file of a kind that is not read. */
    SOUND_FORMAT,
    /** What the columns are is not said. */
    COLUMNS_UNKNOWN,
    /** There is no time. */
    NO_INTERVAL,
    /** The time does not go on. */
    BAD_TIME,
    /** Several records or curves in one file. */
    SEVERAL_RECORDS,
    /** A cell of an export is not the number that it should be. */
    BAD_NUMBER,
    /** A row of an export has too few or too many cells. */
    BAD_ROW,
    /** A channel without a value, or with impossible ones. */
    NO_VALUES,
    /** A stated unit does not go with the export. */
    WRONG_UNIT,
    /** A traced device without voltage or current, or none that conducts. */
    NO_CURVE,

    /** The folder is no job folder. */
    NO_JOB,
    /** The job sheet is not YAML, or YAML that a sheet has no use for. */
    BAD_YAML,
    /** A character that does not belong into a text. */
    BAD_CHARACTER,
    /** Quotes or separators of the captures table. */
    BAD_TABLE,
    /** A key or column that does not exist. */
    UNKNOWN_KEY,
    /** A key, column or cell that is needed. */
    MISSING_KEY,
    /** A name that is not defined. */
    UNKNOWN_NAME,
    /** A value that cannot be used there. */
    BAD_VALUE,
    /** The same thing twice, where one of each may be. */
    TWICE,
    /** States and their roles do not make comparisons. */
    BAD_ROLES,
    /** A state of which the draft's question is not answered. */
    OPEN_QUESTION,
    /** The row's kind is not what the export holds. */
    WRONG_KIND,
    /** Two files that are not one record. */
    NOT_ONE_RECORD,
    /** Which channel of the export is meant. */
    WHICH_CHANNEL,
    /** A picture that cannot be printed. */
    BAD_PICTURE,
    /** Letters that the fonts do not have. */
    NO_LETTERS,
    /** Two jobs of one call have one number. */
    NUMBER_TAKEN,
    /** There are further errors. */
    MORE_ERRORS,

    /** There is no such template, or language of it. */
    NO_TEMPLATE,
    /** A page of a template cannot be filled or printed. */
    BAD_TEMPLATE,
    /** A line of a template's words cannot be used. */
    BAD_WORDS,
    /** A page that takes too long, or too many pages. */
    PAGE_BUDGET,

    /** Something else stands where a result is to go. */
    PLACE_TAKEN,
    /** A result could not be written. */
    NOT_WRITTEN,
    /** Files of an earlier run lie beside the results. */
    LEFT_OVER,

    /** A file that is not a report of this program. */
    NOT_A_REPORT,
    /** A key store that cannot sign. */
    BAD_KEY,

    /** No file of a folder is an export. */
    NO_EXPORTS,
    /** A fault of the program itself. */
    PROGRAM_FAULT;

    /** The code as messages and the manual have it: lower case with hyphens. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * A message with its code at the end.
     *
     * @param message the message without a line end
     */
    public String after(String message) {
        return message + " [" + code() + "]";
    }
}
