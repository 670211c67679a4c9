package clipwitness.reading;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.ColumnUnits;
import clipwitness.quantity.Unit;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.Header;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;

/** Lays the units that the user states over the columns, where there is one for each: of all columns of numbers, or of the channels. */
final class UserUnits {
    private final String file;
    private final List<WrittenUnit> units;

    UserUnits(String file, ReadingOptions options) {
        this.file = file;
        this.units = options.unit().filter(u -> !u.forAll()).map(ColumnUnits::units).orElse(List.of()).stream()
                .map(u -> new WrittenUnit(u.unit(), u.exponent()))
                .toList();
    }

    /** Refuses units that are neither one for all channels nor one for each, of a file that has nothing but channels. */
    static void requireOneFor(String file, ReadingOptions options, int channels) throws InputException {
        UserUnits users = new UserUnits(file, options);
        boolean time = users.units.stream().anyMatch(u -> u.unit() == Unit.SECOND);
        if (!users.units.isEmpty() && (users.units.size() != channels || time)) {
            throw users.unfit(
                    users.units.size(), channels + (channels == 1 ? " channel" : " channels") + " and nothing else");
        }
    }

    private InputException unfit(int stated, String there) {
        return new InputException(
                ErrorCode.WRONG_UNIT,
                Origin.of(file),
                stated + " units are stated, but it has " + there,
                "State one unit for all channels, or one for each column");
    }

    /** The headings in the user's units, where there is a unit for each column of numbers. */
    Header over(Header header, DataBlock block) throws InputException {
        if (units.size() != header.headings().size()) {
            return header;
        }
        for (int place : block.columns()) {
            if (block.unitWithin(place).isPresent()) {
                throw new InputException(
                        ErrorCode.WRONG_UNIT,
                        Origin.of(file),
                        "the numbers of column " + (place + 1)
                                + " have their unit beside them, which a stated unit contradicts",
                        "Leave the column unit of captures.csv, or the option --unit of look, empty");
            }
        }
        return header.inUnits(units);
    }

    /**
     * The columns in the user's units, where there is a unit for each channel.
     *
     * @throws InputException where there are as many units as neither columns nor channels
     */
    Columns over(Columns columns) throws InputException {
        if (units.isEmpty() || units.size() == columns.all().size()) {
            return columns;
        }
        if (units.size() != columns.values().size()) {
            throw unfit(
                    units.size(),
                    columns.all().size() + " columns of numbers, "
                            + columns.values().size() + " of them channels");
        }
        return columns.inUnits(units);
    }
}
