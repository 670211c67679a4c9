/**
 * Pictures of a report. In: the bytes of a JPEG or PNG file. Out: the same picture written anew from its pixels, upright and at print resolution, without
 * anything else that the file held. Does not know pages.
 */
package clipwitness.report.picture;
