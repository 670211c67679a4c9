package clipwitness.compare.finding;

import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import java.util.Objects;
import java.util.Optional;

/**
 * What became of one part of the sound, or of its supply.
 *
 * @param part     part
 * @param decision the gravest decision on its items; empty where it was not examined
 * @param telling  the item that tells most
 */
public record Mark(Part part, Optional<Decision> decision, Optional<Item> telling) {
    /** Checks that all parts are there. */
    public Mark {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(decision, "decision");
        Objects.requireNonNull(telling, "telling");
    }

    /** What a customer asks about. */
    public enum Part {
        /** The wave of the test tone. */
        SOUND,
        /** Noise and hum. */
        NOISE,
        /** The frequency response. */
        TREBLE,
        /** Meter readings. */
        RAILS;

        /** Whether an item is about it; the gain is about none, it is only described. */
        public boolean isAbout(Item item) {
            return switch (item.quantity()) {
                case LEVEL, THD, ASYMMETRY, CREST_FACTOR, NULL_DEPTH, POLARITY -> this == SOUND;
                case NOISE, HUM -> this == NOISE;
                case RESPONSE -> this == TREBLE;
                case RAIL -> this == RAILS;
                case GAIN -> false;
            };
        }
    }
}
