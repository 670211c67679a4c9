package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.figure.canvas.StateStyle;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DeviceStylesTest {
    private static final List<String> SIX = List.of("D1", "D2", "D3", "D4", "D5", "D6");

    /** A reader takes one colour for one thing on all pages. */
    @Test
    void noDeviceLooksLikeAState() {
        List<State> states = SIX.stream()
                .map(n -> new State(n, n, Role.SHOWN, Optional.empty(), List.of()))
                .toList();
        StatePalette palette = StatePalette.of(states);
        DeviceStyles devices = new DeviceStyles(SIX);
        assertThat(IntStream.range(0, 6).mapToObj(i -> devices.of(i).color()))
                .doesNotHaveDuplicates()
                .doesNotContainAnyElementsOf(
                        SIX.stream().map(n -> palette.of(n).color()).toList());
    }

    @Test
    void aBroadLineKeepsColourAndDashes() {
        StateStyle thin = new DeviceStyles(SIX).of(1);
        StateStyle broad = thin.broad();
        assertThat(broad.color()).isEqualTo(thin.color());
        assertThat(Arrays.equals(broad.line().getDashArray(), thin.line().getDashArray()))
                .isTrue();
        assertThat(broad.line().getLineWidth()).isGreaterThan(2 * thin.line().getLineWidth());
    }
}
