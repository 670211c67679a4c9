package clipwitness.bench;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * An audio interface that records two channels of 24 bit into a WAV file: coupled through capacitors, with noise of its own.
 *
 * @param rate      samples a second
 * @param fullScale volts at full scale
 * @param noise     noise of an input, V rms
 */
record AudioInterface(int rate, double fullScale, double noise) {
    private static final int CHANNELS = 2;
    private static final int BYTES = 3;
    private static final int HEAD = 44;
    private static final int MOST = (1 << 23) - 1;

    /** Where its coupling capacitors cut, Hz. */
    private static final OnePole COUPLING = OnePole.highPass(2);

    /** A steady wave as it is recorded: what passes the coupling. */
    static DoubleUnaryOperator steady(Cycle cycle) {
        return COUPLING.of(cycle)::at;
    }

    /**
     * A recording.
     *
     * @param random   for the noise, and for where in the wave it begins
     * @param seconds  how long it is
     * @param channels volts at a time in s of each of two channels
     * @return the bytes of the file
     */
    byte[] record(Random random, double seconds, List<DoubleUnaryOperator> channels) {
        int frames = (int) Math.round(seconds * rate);
        double start = random.nextDouble();
        ByteBuffer file = ByteBuffer.allocate(HEAD + frames * CHANNELS * BYTES).order(ByteOrder.LITTLE_ENDIAN);
        head(file, frames * CHANNELS * BYTES);
        for (int i = 0; i < frames; i++) {
            for (DoubleUnaryOperator channel : channels) {
                double volts = channel.applyAsDouble(start + (double) i / rate) + noise * random.nextGaussian();
                put(file, (int) Math.max(-MOST, Math.min(MOST, Math.rint(volts / fullScale * (MOST + 1)))));
            }
        }
        return file.array();
    }

    private void head(ByteBuffer file, int bytes) {
        int frame = CHANNELS * BYTES;
        file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(HEAD - 8 + bytes);
        file.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        file.putShort((short) 1).putShort((short) CHANNELS).putInt(rate).putInt(rate * frame);
        file.putShort((short) frame).putShort((short) (8 * BYTES));
        file.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(bytes);
    }

    private static void put(ByteBuffer file, int sample) {
        file.put((byte) sample).put((byte) (sample >> 8)).put((byte) (sample >> 16));
    }
}
