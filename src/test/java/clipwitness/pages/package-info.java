/** What the pages of the sample jobs look like: text within the page, nothing over anything else, and the same pictures as before. */
package clipwitness.pages;
