package clipwitness.job;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The sheet's section {@code bench}.
 *
 * @param temperature       °C; empty where the sheet has none (23 °C, known to 3 K, is taken then)
 * @param mains             mains frequency in Hz
 * @param load              what the output drives, Ω
 * @param inputTermination  what the input sees in a noise capture, Ω
 * @param instruments       instruments
 * @param verticalAccuracy  bound, a ratio; 0.03 where the sheet has none
 * @param knobRepeatability one standard deviation, a ratio of full rotation; 0.01 where the sheet has none
 * @param meterAccuracy     bound, a ratio; 0.005 where the sheet has none
 */
public record Bench(
        OptionalDouble temperature,
        OptionalDouble mains,
        OptionalDouble load,
        OptionalDouble inputTermination,
        List<Instrument> instruments,
        double verticalAccuracy,
        double knobRepeatability,
        double meterAccuracy) {
    /** Vertical accuracy where the sheet has none: 3 %. */
    public static final double DEFAULT_VERTICAL_ACCURACY = 0.03;

    /** Knob repeatability where the sheet has none: 1 % of full rotation. */
    public static final double DEFAULT_KNOB_REPEATABILITY = 0.01;

    /** Meter accuracy where the sheet has none: 0.5 %. */
    public static final double DEFAULT_METER_ACCURACY = 0.005;

    /** Bench temperature where the sheet has none, °C, known to 3 K. */
    public static final double DEFAULT_TEMPERATURE = 23;

    /** Lowest temperature that anything is taken to have, °C. */
    public static final int LOWEST_TEMPERATURE = -50;

    /** Highest temperature that anything is taken to have, °C. */
    public static final int HIGHEST_TEMPERATURE = 100;

    /** How well that is known: to 3 K, a bound. */
    public static final double DEFAULT_TEMPERATURE_BOUND = 3;

    /** Copies what it is given. */
    public Bench {
        instruments = List.copyOf(instruments);
    }
}
