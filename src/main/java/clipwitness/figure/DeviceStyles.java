package clipwitness.figure;

import clipwitness.figure.canvas.LinePalette;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.figure.chart.LegendEntry;
import java.util.ArrayList;
import java.util.List;

/**
 * How devices look: each its colour and line, in their order, none in a colour of a state; a legend where they are few enough to be told
 * apart.
 */
final class DeviceStyles {
    private static final int MOST_IN_LEGEND = 12;
    private static final LinePalette PALETTE =
            new LinePalette(0x0E7C86, 0xB52A78, 0x8A7000, 0x8467D6, 0x7A2A14, 0x4D6274);

    private final List<StateStyle> styles = new ArrayList<>();

    DeviceStyles(List<String> names) {
        for (int i = 0; i < names.size(); i++) {
            styles.add(PALETTE.style(i, names.get(i)));
        }
    }

    StateStyle of(int index) {
        return styles.get(index);
    }

    List<LegendEntry> legend() {
        return styles.size() > MOST_IN_LEGEND
                ? List.of()
                : styles.stream().map(LegendEntry::line).toList();
    }
}
