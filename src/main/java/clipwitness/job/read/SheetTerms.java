package clipwitness.job.read;

import clipwitness.job.Instrument;
import clipwitness.job.Stimulus;
import java.util.List;

/**
 * What the captures table may refer to.
 *
 * @param states      names of the states; empty where the sheet has none that can be read
 * @param settings    names of the settings, the first being the default
 * @param stimulus    stimulus of every capture that names no other
 * @param instruments instruments of the bench
 */
record SheetTerms(List<String> states, List<String> settings, Stimulus stimulus, List<Instrument> instruments) {}
