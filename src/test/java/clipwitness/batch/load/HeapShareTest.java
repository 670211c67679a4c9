package clipwitness.batch.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Captures in flight take half of the heap at most, eight bytes for each of their files. */
class HeapShareTest {
    private static final long MIB = 1 << 20;

    @Test
    void anExportThatIsLargerThanTheShareTakesAllOfItAndASmallOneAPart() {
        HeapShare heap = new HeapShare(400 * MIB);
        int large = heap.take(300 * MIB);
        assertThat(heap.isAll(large)).isTrue();
        heap.giveBack(large);
        int small = heap.take(20 * MIB);
        assertThat(heap.isAll(small)).isFalse();
        heap.giveBack(small);
        assertThat(heap.isAll(heap.takeAll())).isTrue();
    }

    @Test
    void whoFindsTooLittleLeftWaitsUntilItIsGivenBack() throws InterruptedException {
        HeapShare heap = new HeapShare(400 * MIB);
        List<String> order = Collections.synchronizedList(new ArrayList<>());
        int first = heap.take(20 * MIB);
        Thread second = new Thread(() -> {
            int part = heap.take(20 * MIB);
            order.add("second");
            heap.giveBack(part);
        });
        second.start();
        while (second.getState() != Thread.State.WAITING) {
            Thread.onSpinWait();
        }
        order.add("first");
        heap.giveBack(first);
        second.join();
        assertThat(order).containsExactly("first", "second");
    }
}
