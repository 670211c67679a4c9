package clipwitness.report.paper;

import java.util.Optional;

/** Where a page's style sheets and pictures come from. There is no other way to a file: nothing is fetched by address. */
@FunctionalInterface
public interface PageFiles {
    /**
     * The content of a file.
     *
     * @param name the name as the page writes it
     * @return the bytes, or empty where there is no such file or it may not be used
     */
    Optional<byte[]> find(String name);
}
