package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Doubt;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was looked at, in one sentence, and the doubts about a frequency response, which change what that sentence is worth. */
final class ExaminedList {
    private final JobWording wording;

    ExaminedList(JobWording wording) {
        this.wording = wording;
    }

    List<String> of(JobResults results) {
        List<String> sentences = new ArrayList<>(looked(results).stream().toList());
        responseDoubts(results).forEach(sentences::add);
        return sentences;
    }

    /** The quantities of all comparisons, and where waves were compared. */
    private Optional<String> looked(JobResults results) {
        List<Item> items = results.comparisons().stream()
                .map(Comparison::items)
                .flatMap(List::stream)
                .filter(i -> i.change().value().isPresent())
                .toList();
        Set<ItemQuantity> quantities = EnumSet.noneOf(ItemQuantity.class);
        items.forEach(i -> quantities.add(i.quantity()));
        List<Condition> waves = items.stream()
                .filter(i -> i.quantity().isOfWaves())
                .map(Item::condition)
                .distinct()
                .toList();
        List<String> names = new ArrayList<>();
        quantities.stream().filter(ItemQuantity::isOfWaves).map(this::name).forEach(names::add);
        List<String> others =
                quantities.stream().filter(q -> !q.isOfWaves()).map(this::name).toList();
        String ofWaves = wording.say(
                "examined.waves",
                "waves",
                wording.list(names),
                "settings",
                waves.isEmpty() ? "" : wording.apart(settings(results, waves)));
        if (names.isEmpty() || others.isEmpty()) {
            String list = names.isEmpty() ? wording.list(others) : ofWaves;
            return list.isEmpty() ? Optional.empty() : Optional.of(wording.say("examined.one", "list", list));
        }
        return Optional.of(wording.say("examined.all", "waves", ofWaves, "others", wording.list(others)));
    }

    private String settings(JobResults results, List<Condition> compared) {
        List<Condition> captured = results.captures().stream()
                .map(CaptureResult::row)
                .filter(r -> r.kind() == CaptureKind.WAVEFORM)
                .map(CaptureRow::condition)
                .distinct()
                .toList();
        return captured.size() > compared.size()
                ? wording.settingsOf(compared, captured)
                : wording.settings(compared, compared);
    }

    private String name(ItemQuantity quantity) {
        return wording.say("quantity.short." + quantity.key());
    }

    private Stream<String> responseDoubts(JobResults results) {
        return results.captures().stream()
                .filter(c -> c.row().kind() == CaptureKind.RESPONSE)
                .map(CaptureResult::doubts)
                .flatMap(List::stream)
                .filter(d -> d.severity() == Severity.WARNING)
                .map(Doubt::reason)
                .collect(Collectors.groupingBy(Reason::form, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(alike -> wording.say(
                        "examined.response", "doubt", wording.speech().text(alike)));
    }
}
