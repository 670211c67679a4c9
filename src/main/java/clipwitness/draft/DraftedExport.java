package clipwitness.draft;

/**
 * An export that a draft is made of.
 *
 * @param path    from the job folder, with forward slashes
 * @param content what its samples tell
 */
public record DraftedExport(String path, Content content) {}
