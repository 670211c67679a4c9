package clipwitness.job;

import java.util.Optional;

/**
 * The sheet's section {@code shop}; texts are empty where the sheet has none.
 *
 * @param name       name
 * @param contact    address, telephone and the like
 * @param logo       path of the logo, relative to the job folder
 * @param technician who measured
 */
public record Shop(String name, String contact, Optional<String> logo, String technician) {}
