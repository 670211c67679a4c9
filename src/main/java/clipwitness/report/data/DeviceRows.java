package clipwitness.report.data;

import clipwitness.compare.result.TracedDevice;
import clipwitness.measure.Measured;
import clipwitness.measure.junction.ForwardVoltage;
import clipwitness.measure.junction.JunctionFit;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.junction.Leakage;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.Map;

/** The figures of a traced device as named rows of a table. */
final class DeviceRows {
    private static final NumberText NUMBERS = NumberText.in("en");

    private DeviceRows() {}

    static Map<String, Measured> of(TracedDevice device) {
        JunctionResult r = device.result();
        String name = device.name() + " ";
        Map<String, Measured> rows = new LinkedHashMap<>();
        for (ForwardVoltage f : r.forwardVoltages()) {
            rows.put(name + "forwardVoltage at " + plain(f.current(), Unit.AMPERE), f.voltage());
        }
        if (r.fit().isPresent()) {
            r.fit().get().figures().forEach((figure, value) -> rows.put(name + figure, value));
        } else {
            rows.put(name + JunctionFit.NAMES.get(0), r.fitted(JunctionFit::saturationCurrent, Unit.AMPERE));
        }
        rows.put(name + "decadeSlope", r.decadeSlope().voltage());
        rows.put(name + "kneeWidth", r.kneeWidth());
        for (Leakage l : r.leakages()) {
            rows.put(name + "leakage at " + plain(l.voltage(), Unit.VOLT), l.current());
        }
        rows.put(name + "retraceGap", r.retraceGap());
        return rows;
    }

    private static String plain(double value, Unit unit) {
        return NUMBERS.nominal(value, unit).replace('\u00a0', ' ').replace('\u2212', '-');
    }
}
