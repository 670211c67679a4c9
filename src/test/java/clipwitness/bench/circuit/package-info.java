/** Whole invented effects in software, and job folders of them, healthy and faulty, made from short descriptions. */
package clipwitness.bench.circuit;
