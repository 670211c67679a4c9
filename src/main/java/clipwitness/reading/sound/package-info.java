/**
 * Sound files. In: the bytes of a WAV file. Out: its channels as fractions of full scale, and its sample rate. Knows nothing of volts. Used by
 * {@code reading} only.
 */
package clipwitness.reading.sound;
