package clipwitness.job;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One instrument of the bench; texts are empty where the sheet has none.
 *
 * @param name             name used in the captures table
 * @param what             description
 * @param serial           serial number
 * @param calibrated       date of the last calibration
 * @param bits             bits of its converter
 * @param verticalAccuracy bound, a ratio
 */
public record Instrument(
        String name,
        String what,
        String serial,
        Optional<LocalDate> calibrated,
        OptionalInt bits,
        OptionalDouble verticalAccuracy) {}
