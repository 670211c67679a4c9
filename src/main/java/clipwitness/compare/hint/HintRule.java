package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import java.util.List;

/** One known fault: looks at the figures of a job and says where they look like it. Never a verdict, and silent on a healthy job. */
interface HintRule {
    /** The places where the figures look like the fault; none on a healthy job. */
    List<Hint> look(Evidence evidence);
}
