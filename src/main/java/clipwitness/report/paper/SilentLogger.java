package clipwitness.report.paper;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Writes the renderer's log nowhere; what it has to say against a page is heard by {@link PageComplaints}. */
final class SilentLogger implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {
        // nobody reads it
    }

    @Override
    public void log(String where, Level level, String message, Throwable cause) {
        // nobody reads it
    }

    @Override
    public void setLevel(String logger, Level level) {
        // there is one level
    }

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
        return false;
    }
}
