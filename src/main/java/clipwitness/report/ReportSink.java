package clipwitness.report;

import java.io.IOException;
import java.util.Map;

/** Where finished documents go. */
public interface ReportSink {
    /**
     * Takes documents that belong together: all of them appear, or none.
     *
     * @param documents file names and contents, in the order in which they are to appear
     * @throws IOException if they could not be written; what stood there before is as it was
     */
    void put(Map<String, byte[]> documents) throws IOException;
}
