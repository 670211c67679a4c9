package clipwitness.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

/** The profile that is written into each report, held against the platform's own colour management. */
class SrgbProfileTest {
    @Test
    void eachColourIsThatOfThePlatformsScreenColours() {
        ColorSpace ours = new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()));
        ColorSpace theirs = ColorSpace.getInstance(ColorSpace.CS_sRGB);
        float[][] colours = {
            {0, 0, 0}, {1, 1, 1}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.05f, 0.31f, 0.4f}, {0.02f, 0.02f, 0.03f}
        };
        for (float[] colour : colours) {
            float[] xyz = ours.toCIEXYZ(colour);
            float[] expected = theirs.toCIEXYZ(colour);
            for (int i = 0; i < xyz.length; i++) {
                assertThat(xyz[i]).isCloseTo(expected[i], within(0.001f));
            }
        }
    }

    /** IEC 61966-2-1: half of the light of white is 188 of 255. */
    @Test
    void theCurveIsThatOfTheStandard() {
        ColorSpace ours = new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()));
        float light = ours.toCIEXYZ(new float[] {188 / 255f, 188 / 255f, 188 / 255f})[1];
        assertThat(light).isCloseTo(0.503f, within(0.001f));
    }

    /** ISO 15076-1, 7.2: size, version 4.2, screen, red green blue, file mark. */
    @Test
    void theHeaderSaysWhatItIs() {
        byte[] profile = SrgbProfile.bytes();
        assertThat(HexFormat.of().formatHex(profile, 0, 4)).isEqualTo(String.format("%08x", profile.length));
        assertThat(HexFormat.of().formatHex(profile, 8, 12)).isEqualTo("04200000");
        assertThat(new String(profile, 12, 12, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("mntrRGB XYZ ");
        assertThat(new String(profile, 36, 4, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("acsp");
    }
}
