package clipwitness.compare.judge;

import java.util.List;

/** Figures that more than one decision rests on, each with its basis. */
public final class CommonPractice {
    /** Distortion from which the clippers of a stage clearly work, percent (measurement book, section 9, and common practice). */
    public static final double CLEARLY_CLIPPED_PERCENT = 3;

    /** Distortion below which a change of distortion is not judged where both states lie below it, percent (measurement book, section 4). */
    public static final double LEAST_JUDGED_PERCENT = 1;

    /** Distortions whose setting of the gain control is looked for, percent (measurement book, section 3: 1 %, 3 % and 10 %). */
    public static final List<Double> ONSET_MARKS_PERCENT = List.of(1.0, 3.0, 10.0);

    /** Change of a level, or of a group of harmonics, that a listener just hears, dB (common practice). */
    public static final double HEARD_DECIBELS = 1;

    /** A change of distortion that is called a little one stays below this, dB (measurement book, section 4). */
    public static final double LITTLE_DECIBELS = 2;

    /** Setting of a gain control that is half way up, percent of its rotation. */
    public static final double HALF_WAY_PERCENT = 50;

    private CommonPractice() {}
}
