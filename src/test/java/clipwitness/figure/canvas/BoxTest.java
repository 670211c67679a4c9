package clipwitness.figure.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BoxTest {
    private static final Box BOX = new Box(10, 20, 30, 5);

    /** The corner lies at 40 and 25; with sides of 3 and 4 the hypotenuse is 5. */
    @Test
    void aPointBesideACornerIsAsFarAsTheHypotenuse() {
        assertThat(BOX.isWithin(5.001, 43, 29)).isTrue();
        assertThat(BOX.isWithin(5, 43, 29)).isFalse();
        assertThat(BOX.isWithin(4.5, 43, 29)).isFalse();
    }

    @Test
    void aPointBesideASideIsAsFarAsTheSide() {
        assertThat(BOX.isWithin(2.1, 8, 22)).isTrue();
        assertThat(BOX.isWithin(2, 8, 22)).isFalse();
        assertThat(BOX.isWithin(1.1, 25, 19)).isTrue();
        assertThat(BOX.isWithin(1, 25, 19)).isFalse();
    }

    @Test
    void aPointInsideIsWithinAnyDistance() {
        assertThat(BOX.isWithin(1e-9, 25, 22)).isTrue();
    }
}
