package clipwitness.compare.rule;

import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Answer.Degree;
import clipwitness.compare.finding.Answer.Kind;
import clipwitness.compare.finding.Answer.Loudness;
import clipwitness.compare.finding.ClippedSetting;
import clipwitness.compare.finding.ClippedSetting.Turn;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.OtherDrive;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Significance;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.JobResults;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What became of the sound of a state that was to change (measurement book, section 4, "The answer"). Settings at which the drive differed
 * say nothing of the unit: they are left out, and where none is left the answer stays open. Nothing is said where neither state clips
 * though the later one is not known to be clean.
 */
final class AnswerRule implements FindingRule {
    private final ClippedSettings settings;
    private final TimbreRule timbre;
    private final OtherDriveRule drive;

    AnswerRule(JobResults results) {
        this.settings = new ClippedSettings(results);
        this.timbre = new TimbreRule(new StateValues(results));
        this.drive = new OtherDriveRule(results);
    }

    @Override
    public List<Paragraph> of(Comparison comparison) {
        if (comparison.intent() == Intent.UNCHANGED) {
            return List.of();
        }
        List<ClippedSetting> clipped = settings.of(comparison);
        List<OtherDrive> driven = clipped.stream()
                .flatMap(s -> drive.of(comparison, s.condition()).stream())
                .toList();
        List<Finding> findings = new ArrayList<>();
        answer(comparison, clipped, driven).ifPresent(findings::add);
        driven.stream().limit(1).forEach(findings::add);
        return Paragraph.of(findings);
    }

    private Optional<Answer> answer(Comparison comparison, List<ClippedSetting> clipped, List<OtherDrive> driven) {
        if (driven.isEmpty() && settings.isClean(comparison.to())) {
            return settings.highest(comparison).map(here -> plain(comparison, Kind.CLEAN, here));
        }
        List<ClippedSetting> alike = clipped.stream()
                .filter(s ->
                        driven.stream().noneMatch(d -> d.subject().condition().equals(s.condition())))
                .toList();
        return alike.isEmpty()
                ? clipped.stream().findFirst().map(here -> plain(comparison, Kind.OPEN, here))
                : Optional.of(full(comparison, alike));
    }

    private static Answer plain(Comparison comparison, Kind word, ClippedSetting here) {
        return new Answer(
                Subject.of(comparison, here.condition()),
                word,
                loudness(List.of(here)),
                here,
                List.of(),
                Degree.PLAIN,
                Optional.empty(),
                Answer.Place.FIRST,
                List.of());
    }

    private Answer full(Comparison comparison, List<ClippedSetting> clipped) {
        Kind word = word(clipped);
        ClippedSetting here = clipped.get(0);
        boolean sameSound = word == Kind.ONLY_LEVEL || word == Kind.SAME;
        return new Answer(
                Subject.of(comparison, here.condition()),
                word,
                loudness(clipped),
                here,
                sameSound ? List.of() : farthest(clipped),
                degree(word, clipped),
                sameSound
                        ? Optional.empty()
                        : timbre.of(
                                comparison,
                                clipped.stream().map(ClippedSetting::condition).toList()),
                Answer.Place.FIRST,
                word == Kind.GENTLER ? freed(clipped) : List.of());
    }

    /** Below the setting that is spoken of, all at which it hardly clips any more, where they are the lowest at which one of the two clips; the highest first. */
    private static List<ClippedSetting> freed(List<ClippedSetting> clipped) {
        List<ClippedSetting> freed = new ArrayList<>();
        for (int i = clipped.size() - 1; i > 0 && clipped.get(i).hardlyClips(); i--) {
            freed.add(0, clipped.get(i));
        }
        return freed;
    }

    private static Kind word(List<ClippedSetting> clipped) {
        if (isSameWave(clipped)) {
            return loudness(clipped) == Loudness.SAME ? Kind.SAME : Kind.ONLY_LEVEL;
        }
        boolean lower = any(clipped, Turn.LOWER);
        boolean higher = any(clipped, Turn.HIGHER);
        if (lower || higher) {
            return lower && higher ? Kind.DIFFERENT : lower ? Kind.GENTLER : Kind.HARSHER;
        }
        boolean stays = clipped.stream().allMatch(s -> s.turn() == Turn.STAYS);
        return stays && clipped.stream().anyMatch(ClippedSetting::isOtherShape) ? Kind.OTHER_SHAPE : Kind.OPEN;
    }

    /** The same wave at the setting that is spoken of, and nothing that is known of the others against it. */
    private static boolean isSameWave(List<ClippedSetting> clipped) {
        return clipped.get(0).sameWave()
                && clipped.stream().allMatch(s -> s.sameWave() || (!s.turns() && !s.isOtherShape()));
    }

    private static Loudness loudness(List<ClippedSetting> settings) {
        List<Boolean> falls = settings.stream()
                .map(ClippedSetting::level)
                .filter(Significance::of)
                .map(Items::isFall)
                .distinct()
                .toList();
        return switch (falls.size()) {
            case 0 -> Loudness.SAME;
            case 1 -> falls.get(0) ? Loudness.QUIETER : Loudness.LOUDER;
            default -> Loudness.BOTH;
        };
    }

    private static boolean any(List<ClippedSetting> clipped, Turn turn) {
        return clipped.stream().anyMatch(s -> s.turn() == turn);
    }

    /** A turn without a figure, beside distortion that is lost in noise, is not called a little one. */
    private static Degree degree(Kind word, List<ClippedSetting> clipped) {
        boolean little = (word == Kind.GENTLER || word == Kind.HARSHER)
                && clipped.stream()
                        .filter(ClippedSetting::turns)
                        .allMatch(s -> s.thd().isPresent() && s.size() < CommonPractice.LITTLE_DECIBELS);
        ClippedSetting here = clipped.get(0);
        if (!little) {
            return Degree.PLAIN;
        }
        return here.isOtherLevel() && here.sameWave() ? Degree.MOSTLY_LEVEL : Degree.LITTLE;
    }

    /** Where the distortion goes farther than at the first setting, or another way: of each way what is farthest for certain. */
    private static List<ClippedSetting> farthest(List<ClippedSetting> clipped) {
        ClippedSetting here = clipped.get(0);
        return Stream.of(Turn.LOWER, Turn.HIGHER)
                .flatMap(turn -> clipped.stream()
                        .filter(s -> s.turn() == turn && s.thd().isPresent())
                        .max(Comparator.comparingDouble(ClippedSetting::least))
                        .stream())
                .filter(s -> s.turn() != here.turn() || goesFarther(s, here))
                .toList();
    }

    private static boolean goesFarther(ClippedSetting other, ClippedSetting here) {
        double uncertainty = other.thd().map(Items::uncertainty).orElse(0.0);
        return Significance.exceeds(other.size() - here.size(), uncertainty);
    }
}
