/**
 * What the names of exports and of their folders tell: state, gain, kind, run, device and more, each with its reason. In: paths. Out:
 * {@link clipwitness.draft.name.NameFacts}. Opens no file.
 */
package clipwitness.draft.name;
