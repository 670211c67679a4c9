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
 * @param residue     whether the figure is what the tone leaves, which may be lost in what is not known
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
        WaveformQuantity.Steps scale,
        boolean residue) {

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
                WaveformQuantity.Steps.LINEAR,
                false);
    }

    /** Two states are compared by the difference. */
    QuantityRow compared(ItemQuantity as) {
        return new QuantityRow(
                key,
                unit,
                needsInput,
                Optional.of(as),
                ofLevel,
                firstPage,
                table,
                picture,
                pictureName,
                scale,
                residue);
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
                scale,
                residue);
    }

    QuantityRow firstPage(int place) {
        return new QuantityRow(
                key,
                unit,
                needsInput,
                item,
                ofLevel,
                OptionalInt.of(place),
                table,
                picture,
                pictureName,
                scale,
                residue);
    }

    QuantityRow table(int place) {
        return new QuantityRow(
                key,
                unit,
                needsInput,
                item,
                ofLevel,
                firstPage,
                OptionalInt.of(place),
                picture,
                pictureName,
                scale,
                residue);
    }

    QuantityRow picture(int place, String name, WaveformQuantity.Steps of) {
        return new QuantityRow(
                key, unit, needsInput, item, ofLevel, firstPage, table, OptionalInt.of(place), name, of, residue);
    }

    /** The figure is what the tone leaves of a wave: where it does not exceed its uncertainty it is an upper bound. */
    QuantityRow leftOver() {
        return new QuantityRow(
                key, unit, needsInput, item, ofLevel, firstPage, table, picture, pictureName, scale, true);
    }
}
