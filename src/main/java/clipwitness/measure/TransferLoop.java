package clipwitness.measure;

import clipwitness.capture.Samples;
import java.util.Objects;
import java.util.Optional;

/**
 * The two branches of a transfer curve that part.
 *
 * @param rising       output while the input rises, V, over the inputs of the curve
 * @param falling      output while it falls, V, over the same inputs
 * @param straightened the filters that were taken off, where that brought the branches together
 */
public record TransferLoop(Samples rising, Samples falling, Optional<FilterCorners> straightened) {
    /** Checks that both branches are of one length. */
    public TransferLoop {
        Objects.requireNonNull(straightened, "straightened");
        if (rising.size() != falling.size()) {
            throw new IllegalArgumentException("the branches must be of one length");
        }
    }
}
