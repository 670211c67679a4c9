/**
 * Where figures are drawn, and how states look. In: nothing. Out: the canvas, shapes, texts, colours and line styles. Independent of results.
 */
package clipwitness.figure.canvas;
