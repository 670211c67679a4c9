package clipwitness.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

/** A document could not be written. */
public final class NotWrittenException extends IOException {
    private static final long serialVersionUID = 1L;

    private final String target;
    private final boolean restored;
    private final WriteFault fault;

    NotWrittenException(Path target, boolean restored, WriteFault fault, IOException cause) {
        super(cause);
        this.fault = Objects.requireNonNull(fault, "fault");
        this.target = Objects.requireNonNull(target.toString(), "target");
        this.restored = restored;
    }

    /** The document, or the folder where none could be written. */
    public String target() {
        return target;
    }

    /** What keeps it from being written. */
    public WriteFault fault() {
        return fault;
    }

    /** Whether all that stood there before is as it was; otherwise the next run into the folder puts it back. */
    public boolean restored() {
        return restored;
    }
}
