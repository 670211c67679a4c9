package clipwitness.compare.finding;

import clipwitness.compare.result.Item;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What became of the sound, in one word and the figures for it (measurement book, section 4, "The answer").
 *
 * @param subject  states, and the setting that is spoken of: the highest at which one of the two clips
 * @param kind     what became of it
 * @param loudness how the level changed over all these settings
 * @param here     the figures at that setting
 * @param farthest other settings that are spoken of, because the distortion goes farther there or the other way
 * @param degree   how far it went
 * @param timbre   what the harmonics above the seventh add; empty where they add nothing
 * @param place    how it stands to an answer about the same state that is told before
 * @param freed    settings, the highest first, at which it was clearly clipped and hardly clips now: all of those up to the highest of them; empty where there are none
 */
public record Answer(
        Subject subject,
        Kind kind,
        Loudness loudness,
        ClippedSetting here,
        List<ClippedSetting> farthest,
        Degree degree,
        Optional<Timbre> timbre,
        Place place,
        List<ClippedSetting> freed)
        implements Finding {
    /** Copies what it is given. */
    public Answer {
        farthest = List.copyOf(farthest);
        freed = List.copyOf(freed);
    }

    /** What became of the sound. */
    public enum Kind {
        /** It changed in level alone. */
        ONLY_LEVEL,
        /** Neither level nor wave changed. */
        SAME,
        /** Less distortion somewhere, nowhere more. */
        GENTLER,
        /** More distortion somewhere, nowhere less. */
        HARSHER,
        /** More distortion at one setting, less at another. */
        DIFFERENT,
        /** As much distortion, of another shape. */
        OTHER_SHAPE,
        /** Not known: the uncertainty may hide a change that is heard, or another drive explains it. */
        OPEN,
        /** The later state does not clip at any setting captured. */
        CLEAN;

        /** Name in the results and of the sentence. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** How the level changed over some settings. */
    public enum Loudness {
        /** Down, or not at all. */
        QUIETER,
        /** Up, or not at all. */
        LOUDER,
        /** Down at one setting, up at another. */
        BOTH,
        /** Nowhere beyond its uncertainty. */
        SAME;

        /** Name of the sentence. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** How far a sound went. */
    public enum Degree {
        /** By less than {@link clipwitness.compare.judge.CommonPractice#LITTLE_DECIBELS} of distortion everywhere. */
        LITTLE,
        /** By that little, and at the setting that is spoken of nothing but the level is heard. */
        MOSTLY_LEVEL,
        /** Farther, or not known. */
        PLAIN
    }

    /** How an answer stands to one about the same state, compared with another one, that is told before. */
    public enum Place {
        /** There is none. */
        FIRST,
        /** It says the same. */
        REPEATS,
        /** It says something else. */
        ADDS
    }

    /** What the harmonics above the seventh add. */
    public enum Timbre {
        /** Less of them. */
        ROUNDER,
        /** More of them. */
        SHARPER;

        /** Name of the sentence. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The same answer, told behind one about the same state. */
    public Answer behind(Answer earlier) {
        Place behind = saysAs(earlier) ? Place.REPEATS : Place.ADDS;
        return new Answer(subject, kind, loudness, here, farthest, degree, timbre, behind, freed);
    }

    /** Whether another answer says the same in words. */
    private boolean saysAs(Answer other) {
        return kind == other.kind
                && degree == other.degree
                && timbre.equals(other.timbre)
                && loudness == other.loudness
                && freed.isEmpty() == other.freed.isEmpty()
                && here.isOtherLevel() == other.here.isOtherLevel();
    }

    /** Of the settings at which it hardly clips now the one that is told: the highest at which its distortion is known, else the highest. */
    public Optional<ClippedSetting> toldOfFreed() {
        return freed.stream()
                .filter(s -> s.amounts().filter(d -> !d.bounded()).isPresent())
                .findFirst()
                .or(() -> freed.stream().findFirst());
    }

    /** What is left of the wave at equal level as a share of it, percent; a bound where noise or repeatability hides it. */
    public Optional<FindingValue> left() {
        return here.nullDepth().map(Answer::left);
    }

    private static FindingValue left(Item depth) {
        double share = 100 * Decibels.toAmplitude(depth.change().value().orElseThrow());
        double expanded = share * (Decibels.toAmplitude(Items.uncertainty(depth)) - 1);
        FindingValue left = FindingValue.known("left", share, Unit.PERCENT, expanded);
        return new FindingValue(
                left.name(), left.value(), left.unit(), left.expandedUncertainty(), Items.isBound(depth));
    }

    @Override
    public String code() {
        return "character";
    }

    @Override
    public String word() {
        return kind.code();
    }

    @Override
    public List<FindingValue> values() {
        List<FindingValue> values = new ArrayList<>(List.of(FindingValue.of(here.level())));
        if (kind == Kind.CLEAN) {
            return values;
        }
        left().ifPresent(values::add);
        here.nullDepth().map(FindingValue::of).ifPresent(values::add);
        here.thd().map(FindingValue::of).ifPresent(values::add);
        for (ClippedSetting other : farthest) {
            other.thd().ifPresent(i -> values.addAll(elsewhere(i)));
        }
        toldOfFreed().flatMap(ClippedSetting::amounts).ifPresent(d -> values.addAll(freed(d)));
        return values;
    }

    private List<FindingValue> freed(Difference thd) {
        List<FindingValue> values = new ArrayList<>(
                List.of(FindingValue.of("thdBefore", thd.before()), FindingValue.of("thdNow", thd.now())));
        freed.get(0)
                .condition()
                .gainPercent()
                .ifPresent(g -> values.add(FindingValue.stated("hardlyClipsUpToGainPercent", g, Unit.PERCENT)));
        return values;
    }

    private static List<FindingValue> elsewhere(Item thd) {
        String name = Items.isFall(thd) ? "thdLowered" : "thdRaised";
        List<FindingValue> values = new ArrayList<>();
        values.add(FindingValue.of(name, thd.change().asValue().orElseThrow()));
        thd.condition()
                .gainPercent()
                .ifPresent(g -> values.add(FindingValue.stated(name + "AtGainPercent", g, Unit.PERCENT)));
        return values;
    }
}
