package clipwitness.compare.judge;

import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Optional;

/** Items of a comparison that are from no waves: of noise, for instance. */
public interface ItemSource {
    /** The items of a comparison. */
    List<Item> of(String from, String to, Intent intent);

    /** Why a comparison has no item of a quantity; empty where the quantity is none of this source. */
    Optional<Reason> whyNot(ItemQuantity quantity, String from, String to);
}
