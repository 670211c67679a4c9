package clipwitness.bench.circuit;

import clipwitness.bench.Block;
import clipwitness.bench.Cycle;
import clipwitness.bench.GainControl;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented effect: gain control, amplifier with its supply and its slew rate, clipper, a clean path beside it, filters, volume.
 *
 * @param control  gain control
 * @param amplifier what drives the clipper
 * @param slew     how fast it moves
 * @param clipping clipping stage
 * @param clean    share of the input that goes round the clipper at 0 % gain; half of it is left at 100 %
 * @param behind   what follows
 * @param volume   a ratio; below 0 it inverts
 * @param hum      line at the mains frequency in the output, V
 */
record Pedal(
        GainControl control,
        Saturation amplifier,
        Slew slew,
        Clipping clipping,
        double clean,
        List<Block> behind,
        double volume,
        double hum) {
    private static final double PLENTY = Double.POSITIVE_INFINITY;

    Pedal {
        behind = List.copyOf(behind);
    }

    /** A plain one: an ideal amplifier, a clipper, a volume control. */
    static Pedal of(double amplification, Clipping clipping) {
        return new Pedal(
                new GainControl(0.05, 32),
                new Saturation(amplification, PLENTY, PLENTY),
                new Slew(PLENTY),
                clipping,
                0,
                List.of(),
                0.5,
                0);
    }

    Pedal control(GainControl other) {
        return new Pedal(other, amplifier, slew, clipping, clean, behind, volume, hum);
    }

    Pedal with(Clipping other) {
        return new Pedal(control, amplifier, slew, other, clean, behind, volume, hum);
    }

    Pedal pair(String other) {
        return with(clipping.with(other));
    }

    Pedal rails(double up, double down) {
        return new Pedal(
                control, new Saturation(amplifier.gain(), up, down), slew, clipping, clean, behind, volume, hum);
    }

    Pedal slewing(double voltsPerSecond) {
        return new Pedal(control, amplifier, new Slew(voltsPerSecond), clipping, clean, behind, volume, hum);
    }

    Pedal clean(double share) {
        return new Pedal(control, amplifier, slew, clipping, share, behind, volume, hum);
    }

    /** The same with one more block behind. */
    Pedal then(Block block) {
        List<Block> more = new ArrayList<>(behind);
        more.add(block);
        return new Pedal(control, amplifier, slew, clipping, clean, more, volume, hum);
    }

    Pedal volume(double ratio) {
        return new Pedal(control, amplifier, slew, clipping, clean, behind, ratio, hum);
    }

    Pedal hum(double volts) {
        return new Pedal(control, amplifier, slew, clipping, clean, behind, volume, volts);
    }

    /** Output in the steady state, the gain control at a position from 0 to 1; the hum stays out of it. */
    Cycle outputFor(Cycle input, double position) {
        double share = control.shareAt(position);
        Cycle wave = clipping.of(slew.of(amplifier.of(input.map(x -> share * x))));
        double around = clean * (1 - position / 2);
        wave = Sum.of(wave, input.map(x -> around * x));
        for (Block block : behind) {
            wave = block.of(wave);
        }
        return wave.map(y -> volume * y);
    }
}
