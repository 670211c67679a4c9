/**
 * Reports as evidence: a PDF of this program read again, with all that it carries, and the signature of a shop on it. In: bytes that nobody
 * vouches for. Out: what they hold, or why that cannot be said. Writes nothing; independent of waves, jobs and verdicts.
 */
package clipwitness.report.evidence;
