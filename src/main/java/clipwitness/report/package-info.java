/**
 * The paper and the machine-readable results: model, words, templates, PDF, JSON, CSV. In: finished results.
 * Out: documents in a sink. Computes and judges nothing.
 */
package clipwitness.report;
