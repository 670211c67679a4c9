package clipwitness.reading;

import clipwitness.capture.Channel;
import clipwitness.capture.Samples;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.ArrayList;
import java.util.List;

/**
 * Sweeps of a curve that stand below one another: the swept voltage jumps back over half of its range or more, and goes on from there. Up and
 * down again without a jump is one sweep.
 */
final class Sweeps {
    private static final double JUMP = 0.5;

    private Sweeps() {}

    /**
     * Notes several sweeps of one device; refuses a family of curves, where a third column has a value of its own in each sweep.
     *
     * @param channels channels of the curve
     */
    static void check(String file, List<Channel> channels, Notes notes) throws InputException {
        boolean noted = false;
        for (Channel swept : channels) {
            List<Integer> starts = is(swept, Unit.VOLT) ? starts(swept.samples()) : List.of();
            if (starts.size() > 1) {
                refuseFamily(file, channels, swept, starts);
            }
            if (starts.size() > 1 && !noted) {
                refuseUnlike(file, channels, swept, starts);
                notes.evidence(LayoutRemark.SWEEPS, Argument.name(swept.name()), Argument.count(starts.size()));
                noted = true;
            }
        }
    }

    private static void refuseFamily(String file, List<Channel> channels, Channel swept, List<Integer> starts)
            throws InputException {
        for (Channel channel : channels) {
            if (channel.column() != swept.column() && steps(channel.samples(), starts)) {
                throw new InputException(
                        ErrorCode.SEVERAL_RECORDS,
                        new Origin(file, 0, "column " + channel.name()),
                        "it steps from sweep to sweep of " + swept.name() + ": " + starts.size()
                                + " curves stand below one another",
                        "Export one curve a file");
            }
        }
    }

    /** Sweeps of one device give the same current at the same voltage, but for warming and noise. */
    private static void refuseUnlike(String file, List<Channel> channels, Channel swept, List<Integer> starts)
            throws InputException {
        for (Channel current : channels) {
            if (is(current, Unit.AMPERE) && SweepsApart.are(swept.samples(), current.samples(), starts)) {
                throw new InputException(
                        ErrorCode.SEVERAL_RECORDS,
                        new Origin(file, 0, "column " + current.name()),
                        "the sweeps of " + swept.name() + " differ in it at the same voltage: " + starts.size()
                                + " curves stand below one another",
                        "Export one curve a file");
            }
        }
    }

    private static boolean is(Channel channel, Unit unit) {
        return channel.unit().filter(u -> u == unit).isPresent();
    }

    /** The rows, from 0, on which the sweeps begin. */
    private static List<Integer> starts(Samples swept) {
        List<Integer> starts = new ArrayList<>(List.of(0));
        double jump = JUMP * (swept.maximum() - swept.minimum());
        for (int i = 2; i + 1 < swept.size(); i++) {
            double step = swept.at(i) - swept.at(i - 1);
            boolean against =
                    step * (swept.at(i - 1) - swept.at(i - 2)) < 0 && step * (swept.at(i + 1) - swept.at(i)) < 0;
            if (Math.abs(step) >= jump && against) {
                starts.add(i);
            }
        }
        return starts;
    }

    /** Whether values stay the same within each sweep and differ between them. */
    private static boolean steps(Samples values, List<Integer> starts) {
        boolean differ = false;
        for (int i = 1; i < values.size(); i++) {
            boolean same = values.at(i) == values.at(i - 1);
            if (!same && !starts.contains(i)) {
                return false;
            }
            differ |= !same;
        }
        return differ;
    }
}
