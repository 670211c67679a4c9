/**
 * The documents: a report and a sheet for the drawer as PDF, and the folder they go to. In: finished results. Out: files in that folder.
 * Computes and judges nothing.
 */
package clipwitness.report;
