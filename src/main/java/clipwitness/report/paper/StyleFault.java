package clipwitness.report.paper;

/**
 * A style that the renderer leaves out, because it does not know it or cannot read it.
 *
 * @param file   style sheet as the page names it; empty for a style element of the page
 * @param number which style element, from 1; 0 for a file
 * @param line   line in it, from 1
 * @param what   what is wrong, a clause
 */
public record StyleFault(String file, int number, int line, String what) {}
