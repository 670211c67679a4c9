package clipwitness.compare.judge;

import java.util.Random;

/** How often each setting of a job was set and captured. */
enum RunPlan {
    /** Once each. */
    ONCE,
    /** Twice each. */
    TWICE,
    /** Three times each. */
    THRICE,
    /** The middle one of the state before twice, all else once. */
    ONE_TWICE,
    /** Each setting of each state once, twice or three times at random. */
    MIXED;

    int runs(String state, double gain, Random random) {
        return switch (this) {
            case ONCE -> 1;
            case TWICE -> 2;
            case THRICE -> 3;
            case ONE_TWICE -> gain == 50 && "a".equals(state) ? 2 : 1;
            case MIXED -> 1 + random.nextInt(3);
        };
    }
}
