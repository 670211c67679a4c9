package clipwitness.report.build;

import clipwitness.job.Photo;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The order in which photos are printed, two in a row: each of the state before the work beside one of a state after it, in the sheet's order on both
 * sides; then the rest, those that name no state last. Without photos of both sides the sheet's order stands.
 */
final class PhotoOrder {
    private PhotoOrder() {}

    /**
     * Places of the photos in the sheet's list, in the order of print.
     *
     * @param photos the sheet's photos
     * @param states the sheet's states
     */
    static List<Integer> of(List<Photo> photos, List<State> states) {
        List<Integer> before = places(photos, states, true);
        List<Integer> after = places(photos, states, false);
        if (before.isEmpty() || after.isEmpty()) {
            return IntStream.range(0, photos.size()).boxed().toList();
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
            order.addAll(before.subList(Math.min(i, before.size()), Math.min(i + 1, before.size())));
            order.addAll(after.subList(Math.min(i, after.size()), Math.min(i + 1, after.size())));
        }
        IntStream.range(0, photos.size())
                .filter(i -> photos.get(i).state().isEmpty())
                .forEach(order::add);
        return List.copyOf(order);
    }

    private static List<Integer> places(List<Photo> photos, List<State> states, boolean before) {
        return IntStream.range(0, photos.size())
                .filter(i -> isOf(photos.get(i), states, before))
                .boxed()
                .toList();
    }

    private static boolean isOf(Photo photo, List<State> states, boolean before) {
        Optional<State> shown = states.stream()
                .filter(s -> photo.state().filter(s.name()::equals).isPresent())
                .findFirst();
        return shown.isPresent() && (shown.get().role() == Role.BEFORE) == before;
    }
}
