package clipwitness.measure;

import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Word;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One row of {@link WaveformQuantity}. Places are counted from 1; a figure without a place is not shown there.
 *
 * @param key         name in the results
 * @param unit        where the channel is in volts
 * @param needsInput  whether the figure needs an input channel
 * @param item        the change that two states are compared by
 * @param ofLevel     name in sentences, where the change is a ratio in dB
 * @param firstPage   place in the table of the first page
 * @param table       place among the tables over the gain control
 * @param picture     place among the pictures over the gain control
 * @param pictureName end of that picture's name; figures of one name share a picture
 * @param scale       of that picture
 */
record QuantityRow(
        String key,
        Unit unit,
        boolean needsInput,
        Optional<ItemQuantity> item,
        Optional<Word> ofLevel,
        OptionalInt firstPage,
        OptionalInt table,
        OptionalInt picture,
        String pictureName,
        WaveformQuantity.Steps scale) {

    static QuantityRow of(String key, Unit unit, boolean needsInput) {
        OptionalInt none = OptionalInt.empty();
        return new QuantityRow(
                key,
                unit,
                needsInput,
                Optional.empty(),
                Optional.empty(),
                none,
                none,
                none,
                "",
                WaveformQuantity.Steps.LINEAR);
    }

    /** Two states are compared by the difference. */
    QuantityRow compared(ItemQuantity as) {
        return new QuantityRow(
                key, unit, needsInput, Optional.of(as), ofLevel, firstPage, table, picture, pictureName, scale);
    }

    /** Two states are compared by the ratio in dB; the word names the figure where it is zero and has no level. */
    QuantityRow inDecibels(ItemQuantity as, Word word) {
        return new QuantityRow(
                key,
                unit,
                needsInput,
                Optional.of(as),
                Optional.of(word),
                firstPage,
                table,
                picture,
                pictureName,
                scale);
    }

    QuantityRow firstPage(int place) {
        return new QuantityRow(
                key, unit, needsInput, item, ofLevel, OptionalInt.of(place), table, picture, pictureName, scale);
    }

    QuantityRow table(int place) {
        return new QuantityRow(
                key, unit, needsInput, item, ofLevel, firstPage, OptionalInt.of(place), picture, pictureName, scale);
    }

    QuantityRow picture(int place, String name, WaveformQuantity.Steps of) {
        return new QuantityRow(key, unit, needsInput, item, ofLevel, firstPage, table, OptionalInt.of(place), name, of);
    }
}
