package clipwitness.report.model;

/**
 * A photo.
 *
 * @param source  for the {@code src} attribute of the {@code img} element
 * @param caption caption, empty where the sheet has none
 * @param state   label of the state that it shows, empty where the sheet names none
 * @param alt     alternative text
 */
public record ShownPhoto(String source, String caption, String state, String alt) {}
