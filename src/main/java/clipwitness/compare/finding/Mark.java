package clipwitness.compare.finding;

import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.quantity.ItemQuantity;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

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

    /** What a customer asks after. */
    public enum Part {
        /** The wave of the test tone. */
        SOUND(
                ItemQuantity.LEVEL,
                ItemQuantity.THD,
                ItemQuantity.ASYMMETRY,
                ItemQuantity.CREST_FACTOR,
                ItemQuantity.NULL_DEPTH,
                ItemQuantity.POLARITY),
        /** Noise and hum. */
        NOISE(ItemQuantity.NOISE, ItemQuantity.HUM),
        /** The frequency response. */
        TREBLE(ItemQuantity.RESPONSE),
        /** Meter readings. */
        RAILS(ItemQuantity.RAIL);

        private final Set<ItemQuantity> quantities;

        Part(ItemQuantity... quantities) {
            this.quantities = Set.of(quantities);
        }

        /** Whether an item is about it. */
        public boolean isAbout(Item item) {
            return quantities.contains(item.quantity());
        }
    }
}
