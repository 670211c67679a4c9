/**
 * A job sheet and a captures table from nothing but exports. In: names and contents. Out: {@link clipwitness.draft.Draft}, with a reason for every
 * guess and a question for everything that cannot be told, and both texts. Opens no file and writes none.
 */
package clipwitness.draft;
