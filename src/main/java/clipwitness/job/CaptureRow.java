package clipwitness.job;

import clipwitness.capture.Condition;
import clipwitness.quantity.ColumnUnits;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of the captures table.
 *
 * @param row         1-based line in the table; the header row is 1
 * @param file        path of the export as written, with forward slashes
 * @param state       state, always there except for junctions
 * @param kind        what the capture is for
 * @param condition   condition, the sheet's stimulus and first setting filled in where the row is silent; frequency and level are
 *                    empty for noise and junctions
 * @param run         number of the occasion on which the controls were set, 1 or more
 * @param input       name or 1-based number of the input channel
 * @param output      name or 1-based number of the output channel
 * @param inputFile   export that holds the input channel, where it is another file
 * @param inputProbe  factor on the input's volts
 * @param outputProbe factor on the output's volts
 * @param interval    sample interval in s, where the export does not say
 * @param unit        unit of the values, or one for each column, where the export does not say
 * @param scale       volts or amperes a count, where the export does not say
 * @param device      device, for junctions
 * @param temperature °C, where it differs from the bench's
 * @param date        date of the capture
 * @param instrument  name of the instrument
 * @param coupling    {@code dc} or {@code ac}
 * @param acquisition {@code sample}, {@code average N}, {@code peak-detect}
 * @param note        free text, empty where there is none
 */
public record CaptureRow(
        int row,
        String file,
        Optional<String> state,
        CaptureKind kind,
        Condition condition,
        int run,
        Optional<String> input,
        Optional<String> output,
        Optional<String> inputFile,
        double inputProbe,
        double outputProbe,
        OptionalDouble interval,
        Optional<ColumnUnits> unit,
        OptionalDouble scale,
        Optional<String> device,
        OptionalDouble temperature,
        Optional<LocalDate> date,
        Optional<String> instrument,
        Optional<String> coupling,
        Optional<String> acquisition,
        String note) {}
