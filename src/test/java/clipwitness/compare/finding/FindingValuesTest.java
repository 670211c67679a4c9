package clipwitness.compare.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Code, word and figures of every finding, in the names that the results have. */
class FindingValuesTest {
    private static final Condition AT = ExampleJob.condition(50);
    private static final Subject SUBJECT = new Subject(Optional.of("received"), Optional.of("new"), AT);

    private static Measured.Value value(double number, Unit unit, double expanded) {
        return Measured.withNoise(number, unit, expanded / 2);
    }

    private static Item item(ItemQuantity quantity, double change, double expanded) {
        return item(quantity, value(change, quantity.unit(), expanded), AT);
    }

    private static Item item(ItemQuantity quantity, Measured change, Condition condition) {
        return new Item(
                quantity,
                condition,
                change,
                OptionalDouble.empty(),
                Decision.DESCRIBED,
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static Difference difference(double before, double now, double expanded) {
        return Difference.of(value(before, Unit.DECIBEL, expanded), value(now, Unit.DECIBEL, expanded));
    }

    /** Name, number and unit of each figure; its uncertainty where it has one. */
    private static List<String> told(Finding finding) {
        return finding.values().stream()
                .map(v -> v.name() + " " + Math.round(1000 * v.value()) / 1000.0 + " "
                        + v.unit().symbol()
                        + (v.expandedUncertainty().isPresent()
                                ? " +- "
                                        + Math.round(1000
                                                        * v.expandedUncertainty()
                                                                .getAsDouble())
                                                / 1000.0
                                : "")
                        + (v.isUpperBound() ? " bound" : ""))
                .toList();
    }

    private static void holds(Finding finding, String code, String word, String... values) {
        assertThat(finding.code()).isEqualTo(code);
        assertThat(finding.word()).isEqualTo(word);
        assertThat(told(finding)).containsExactly(values);
        assertThat(finding.subject()).isEqualTo(SUBJECT);
    }

    @Test
    void evenHarmonicsRiseOrFall() {
        holds(
                new EvenHarmonics(SUBJECT, difference(-40, -30, 3)),
                "even-harmonics",
                "higher",
                "evenHarmonics 10.0 dB +- 4.243");
        holds(
                new EvenHarmonics(SUBJECT, difference(-30, -40, 3)),
                "even-harmonics",
                "lower",
                "evenHarmonics -10.0 dB +- 4.243");
    }

    /** A bound of -40 dB and 3 dB may be -37 dB; -20 dB and 3 dB is -23 dB at least: 14 dB apart. */
    @Test
    void besideABoundADifferenceIsAtLeastSoLarge() {
        Measured.Value bound = value(-40, Unit.DECIBEL, 3).asUpperBound();
        Measured.Value known = value(-20, Unit.DECIBEL, 3);
        holds(
                new EvenHarmonics(SUBJECT, Difference.of(bound, known)),
                "even-harmonics",
                "higher",
                "evenHarmonicsAtLeast 14.0 dB");
        holds(
                new EvenHarmonics(SUBJECT, Difference.of(known, bound)),
                "even-harmonics",
                "lower",
                "evenHarmonicsAtLeast -14.0 dB");
        assertThat(Difference.of(bound, bound).least()).isZero();
        assertThat(Difference.of(bound, bound).significant()).isFalse();
        assertThat(Difference.of(value(-10, Unit.DECIBEL, 1).asUpperBound(), known)
                        .least())
                .isZero();
        assertThat(Difference.of(known, value(-10, Unit.DECIBEL, 1).asUpperBound())
                        .least())
                .isZero();
        assertThat(Difference.of(bound, value(-36, Unit.DECIBEL, 3)).least()).isZero();
        assertThat(Difference.of(bound, known).significant()).isTrue();
    }

    @Test
    void twoIndependentDifferencesAddAndTheirUncertaintiesByRootSumSquare() {
        Difference sum = difference(1, 4, 3).plus(-5, 4);
        assertThat(sum.change()).isEqualTo(-2);
        assertThat(sum.uncertainty()).isCloseTo(Math.sqrt(34), within(1e-12));
        assertThat(sum.reach()).isEqualTo(10);
        assertThat(sum.isRise()).isFalse();
        assertThat(difference(1, 4, 2).significant()).isTrue(); // 3 against 2.83
        assertThat(difference(1, 4, 2.2).significant()).isFalse(); // 3 against 3.11
    }

    @Test
    void whatDiffersIsNamedBySense() {
        List<Telling> tellings =
                List.of(Telling.of(item(ItemQuantity.LEVEL, -2, 0.1)), Telling.of(item(ItemQuantity.THD, 0.1, 0.5)));
        String[] values = {"level -2.0 dB +- 0.1", "thd 0.1 dB +- 0.5"};
        holds(new Differs(SUBJECT, tellings), "differs", "level less, thd equal", values);
        holds(new Pictured(SUBJECT, tellings), "pictured", "level less, thd equal", values);
        assertThat(tellings).extracting(Telling::isChange).containsExactly(true, false);
        assertThat(Telling.of(item(ItemQuantity.LEVEL, 2, 0.1)).isChange()).isTrue();
    }

    @Test
    void levelAloneIsLouderOrQuieter() {
        Item depth = item(ItemQuantity.NULL_DEPTH, -40, 1);
        holds(
                new LevelOnly(SUBJECT, item(ItemQuantity.LEVEL, 3, 0.1), depth),
                "level-only",
                "louder",
                "level 3.0 dB +- 0.1",
                "null-depth -40.0 dB +- 1.0");
        holds(
                new LevelOnly(SUBJECT, item(ItemQuantity.LEVEL, -3, 0.1), depth),
                "level-only",
                "quieter",
                "level -3.0 dB +- 0.1",
                "null-depth -40.0 dB +- 1.0");
    }

    @Test
    void theGainOfEqualDistortionIsLowerOrHigher() {
        holds(
                new EqualGain(SUBJECT, 50, value(40, Unit.PERCENT, 2)),
                "equal-gain",
                "lower",
                "fromGainPercent 50.0 %",
                "toGainPercent 40.0 % +- 2.0");
        holds(
                new EqualGain(SUBJECT, 50, value(60, Unit.PERCENT, 2)),
                "equal-gain",
                "higher",
                "fromGainPercent 50.0 %",
                "toGainPercent 60.0 % +- 2.0");
    }

    @Test
    void theHalvesOfAWaveAreClippedAlikeOrNot() {
        Difference asymmetry = Difference.of(value(1, Unit.PERCENT, 0.5), value(-33, Unit.PERCENT, 0.5));
        holds(
                new Asymmetric(SUBJECT, WaveformQuantity.ASYMMETRY, asymmetry, Asymmetric.Kind.UNLIKE),
                "asymmetry",
                "unlike",
                "asymmetryBefore 1.0 % +- 0.5",
                "asymmetryNow -33.0 % +- 0.5");
        assertThat(new Asymmetric(SUBJECT, WaveformQuantity.ASYMMETRY, asymmetry, Asymmetric.Kind.ALIKE).word())
                .isEqualTo("alike");
    }

    @Test
    void theWaveComesNearTheRails() {
        holds(
                new Headroom(SUBJECT, value(7.5, Unit.VOLT, 0.1), 9),
                "headroom",
                "near-the-rails",
                "swing 7.5 V +- 0.1",
                "span 9.0 V");
    }

    @Test
    void trebleIsDarkerBrighterOrTheSameByItsLargestPart() {
        Treble.Part four = new Treble.Part(4, value(-1, Unit.DECIBEL, 0.2));
        Treble.Part eight = new Treble.Part(8, value(-3, Unit.DECIBEL, 0.3));
        holds(
                new Treble(SUBJECT, List.of(four, eight), true),
                "treble",
                "darker",
                "changeAt4kHz -1.0 dB +- 0.2",
                "changeAt8kHz -3.0 dB +- 0.3");
        assertThat(new Treble(SUBJECT, List.of(four, eight), true).largest()).isEqualTo(eight);
        Treble.Part up = new Treble.Part(4, value(4, Unit.DECIBEL, 0.2));
        assertThat(new Treble(SUBJECT, List.of(up, eight), true).word()).isEqualTo("brighter");
        assertThat(new Treble(SUBJECT, List.of(up, eight), true).largest()).isEqualTo(up);
        assertThat(new Treble(SUBJECT, List.of(up, eight), false).word()).isEqualTo("same");
        assertThatThrownBy(() -> new Treble(SUBJECT, List.of(), true)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aFigureMovedBeyondOrWithinItsLimit() {
        Settings settings = new Settings(List.of(AT, Condition.NONE), List.of(AT), List.of(AT));
        Item thd = item(ItemQuantity.THD, 0.8, 0.1);
        holds(
                new Moved(SUBJECT, thd, false, settings, Optional.empty(), false, false),
                "moved",
                "within",
                "thd 0.8 dB +- 0.1",
                "limit 1.0 dB");
        assertThat(new Moved(SUBJECT, thd, true, settings, Optional.empty(), false, false).word())
                .isEqualTo("beyond");
        assertThat(new Moved(SUBJECT, thd, true, settings, Optional.empty(), false, false).way())
                .contains(Telling.Kind.MORE);
        assertThat(settings.all()).isFalse();
        assertThat(new Settings(List.of(AT), List.of(AT), List.of()).all()).isTrue();
    }

    @Test
    void theShapeIsHeldToTheLimitOfTheNullDepth() {
        Settings settings = new Settings(List.of(AT), List.of(AT), List.of(AT));
        holds(
                new SameShape(SUBJECT, item(ItemQuantity.NULL_DEPTH, -45, 1), SameShape.Kind.WITHIN, settings),
                "same-shape",
                "within",
                "null-depth -45.0 dB +- 1.0",
                "limit -32.0 dB");
    }

    @Test
    void remaindersAreOneOrARange() {
        Item deep = item(ItemQuantity.NULL_DEPTH, -45, 1);
        Item shallow = item(ItemQuantity.NULL_DEPTH, -15, 1);
        holds(
                new Remainders(SUBJECT, deep, shallow),
                "remainder",
                "range",
                "deepest -45.0 dB +- 1.0",
                "shallowest -15.0 dB +- 1.0");
        assertThat(new Remainders(SUBJECT, deep, deep).word()).isEqualTo("one");
    }

    @Test
    void anotherDriveIsStrongerOrWeaker() {
        FindingValue up = FindingValue.known("input", 1.5, Unit.DECIBEL, 0.2);
        FindingValue down = FindingValue.known("input", -1.5, Unit.DECIBEL, 0.2);
        holds(new OtherDrive(SUBJECT, up), "other-drive", "stronger", "input 1.5 dB +- 0.2");
        holds(new OtherDrive(SUBJECT, down), "other-drive", "weaker", "input -1.5 dB +- 0.2");
    }

    @Test
    void aRefusedCaptureHasTheWordOfItsDoubtAndNoFigure() {
        holds(
                new RefusedCapture(SUBJECT, "a.csv", Doubt.of(Severity.REFUSAL, DoubtReason.NO_FUNDAMENTAL), 2),
                "refused",
                "no-fundamental");
    }

    @Test
    void theOnsetHasItsMarkBothSettingsAndTheHalvesThatMoved() {
        Measured.Value from = value(40, Unit.PERCENT, 2);
        Measured never = Measured.refused(Unit.PERCENT, FigureReason.LINE_HIDDEN);
        Difference onset = Difference.of(value(0.1, Unit.VOLT, 0.01), value(0.2, Unit.VOLT, 0.01));
        OtherHalves halves =
                new OtherHalves(AT, List.of(new OtherHalves.Half(true, onset), new OtherHalves.Half(false, onset)));
        holds(
                new Onset(SUBJECT, 3, Onset.Kind.SAME, from, from, Optional.of(halves)),
                "onset",
                "same",
                "thd 3.0 %",
                "fromGainPercent 40.0 % +- 2.0",
                "toGainPercent 40.0 % +- 2.0",
                "onsetUpBefore 0.1 V +- 0.01",
                "onsetUpNow 0.2 V +- 0.01",
                "onsetDownBefore 0.1 V +- 0.01",
                "onsetDownNow 0.2 V +- 0.01");
        holds(
                new Onset(SUBJECT, 3, Onset.Kind.NEVER, from, never, Optional.empty()),
                "onset",
                "never",
                "thd 3.0 %",
                "fromGainPercent 40.0 % +- 2.0");
        holds(
                new Onset(SUBJECT, 3, Onset.Kind.NEW, never, from, Optional.empty()),
                "onset",
                "new",
                "thd 3.0 %",
                "toGainPercent 40.0 % +- 2.0");
    }

    @Test
    void harmonicsAtEqualLevelRiseFallStayOrAreBuried() {
        LevelMatchedHarmonic ninth = new LevelMatchedHarmonic(AT, 9, value(-4, Unit.DECIBEL, 1));
        Matched.Elsewhere elsewhere = new Matched.Elsewhere(ExampleJob.condition(75), difference(-40, -50, 3));
        holds(
                new Matched(SUBJECT, difference(-40, -30, 3), Optional.of(elsewhere), List.of(ninth)),
                "level-matched",
                "higher",
                "highHarmonics 10.0 dB +- 4.243",
                "elsewhereGainPercent 75.0 %",
                "elsewhereHighHarmonics -10.0 dB +- 4.243",
                "harmonic9 -4.0 dB +- 1.0");
        assertThat(matched(difference(-30, -40, 3))).isEqualTo("lower");
        assertThat(matched(difference(-30, -31, 3))).isEqualTo("alike");
        Measured.Value bound = value(-40, Unit.DECIBEL, 3).asUpperBound();
        assertThat(matched(Difference.of(bound, bound))).isEqualTo("buried");
    }

    private static String matched(Difference high) {
        return new Matched(SUBJECT, high, Optional.empty(), List.of()).word();
    }

    /** -20 dB is a tenth of the wave, 10 %; U of 6.0206 dB doubles it: 10 %. */
    @Test
    void theAnswerHasWhatIsLeftAsAShareOfTheWave() {
        Item level = item(ItemQuantity.LEVEL, -3, 0.1);
        Item depth = item(ItemQuantity.NULL_DEPTH, -20, 6.0206);
        Item thd = item(ItemQuantity.THD, -2, 0.5);
        ClippedSetting here = new ClippedSetting(
                level, Optional.of(depth), Optional.of(thd), ClippedSetting.Turn.LOWER, Optional.empty());
        holds(
                answer(Answer.Kind.GENTLER, here),
                "character",
                "gentler",
                "level -3.0 dB +- 0.1",
                "left 10.0 % +- 10.0",
                "null-depth -20.0 dB +- 6.021",
                "thd -2.0 dB +- 0.5",
                "thdRaised 4.0 dB +- 0.5",
                "thdRaisedAtGainPercent 75.0 %");
        holds(answer(Answer.Kind.CLEAN, here), "character", "clean", "level -3.0 dB +- 0.1");
        Item bound =
                item(ItemQuantity.NULL_DEPTH, value(-20, Unit.DECIBEL, 6.0206).asUpperBound(), AT);
        ClippedSetting hidden = new ClippedSetting(
                level, Optional.of(bound), Optional.empty(), ClippedSetting.Turn.UNKNOWN, Optional.empty());
        assertThat(told(answer(Answer.Kind.OPEN, hidden))).contains("left 10.0 % +- 10.0 bound");
    }

    private static Answer answer(Answer.Kind kind, ClippedSetting here) {
        Item raised = item(ItemQuantity.THD, value(4, Unit.DECIBEL, 0.5), ExampleJob.condition(75));
        ClippedSetting other = new ClippedSetting(
                item(ItemQuantity.LEVEL, 0, 0.1),
                Optional.empty(),
                Optional.of(raised),
                ClippedSetting.Turn.HIGHER,
                Optional.empty());
        return new Answer(
                SUBJECT,
                kind,
                Answer.Loudness.QUIETER,
                here,
                List.of(other),
                Answer.Degree.PLAIN,
                Optional.empty(),
                Answer.Place.FIRST,
                List.of());
    }

    @Test
    void anAnswerBehindOneThatSaysTheSameRepeatsIt() {
        ClippedSetting quiet = new ClippedSetting(
                item(ItemQuantity.LEVEL, -3, 0.1),
                Optional.empty(),
                Optional.empty(),
                ClippedSetting.Turn.STAYS,
                Optional.empty());
        ClippedSetting equal = new ClippedSetting(
                item(ItemQuantity.LEVEL, -0.9, 0.1),
                Optional.empty(),
                Optional.empty(),
                ClippedSetting.Turn.STAYS,
                Optional.empty());
        Answer gentler = answer(Answer.Kind.GENTLER, quiet);
        assertThat(gentler.behind(gentler).place()).isEqualTo(Answer.Place.REPEATS);
        assertThat(gentler.behind(answer(Answer.Kind.HARSHER, quiet)).place()).isEqualTo(Answer.Place.ADDS);
        assertThat(gentler.behind(answer(Answer.Kind.GENTLER, equal)).place()).isEqualTo(Answer.Place.ADDS);
        assertThat(quiet.isOtherLevel()).isTrue();
        assertThat(equal.isOtherLevel()).isFalse();
        assertThat(quiet.turns()).isFalse();
        assertThat(quiet.size()).isZero();
    }

    /** The usual limit of the null depth is -32 dB. */
    @Test
    void aNullKeepsTheShapeOrShowsAnotherOnlyWithItsWholeUncertainty() {
        assertThat(nulled(-34, 1, 0.5).keepsShape()).isTrue();
        assertThat(nulled(-32.5, 1, 0.5).keepsShape()).isFalse();
        assertThat(nulled(-30, 1, 0.5).isOtherShape()).isTrue();
        assertThat(nulled(-31.5, 1, 0.5).isOtherShape()).isFalse();
        assertThat(nulled(-34, 1, 0.5).sameWave()).isTrue();
        assertThat(nulled(-34, 1, 1.5).sameWave()).isFalse();
        assertThat(nulled(-34, 1, -1.5).least()).isCloseTo(1.4, within(1e-12));
        assertThat(nulled(-34, 1, 0.5).turns()).isTrue();
    }

    private static ClippedSetting nulled(double depth, double expanded, double thd) {
        return new ClippedSetting(
                item(ItemQuantity.LEVEL, 0, 0.1),
                Optional.of(item(ItemQuantity.NULL_DEPTH, depth, expanded)),
                Optional.of(item(ItemQuantity.THD, thd, 0.1)),
                ClippedSetting.Turn.HIGHER,
                Optional.empty());
    }

    @Test
    void eachQuantityIsAboutOnePartOfTheSoundAndTheGainAboutNone() {
        for (ItemQuantity quantity : ItemQuantity.values()) {
            List<Mark.Part> parts = List.of(Mark.Part.values()).stream()
                    .filter(p -> p.isAbout(item(quantity, 0, 0)))
                    .toList();
            List<Mark.Part> expected = switch (quantity) {
                case GAIN -> List.of();
                case NOISE, HUM -> List.of(Mark.Part.NOISE);
                case RESPONSE -> List.of(Mark.Part.TREBLE);
                case RAIL -> List.of(Mark.Part.RAILS);
                default -> List.of(Mark.Part.SOUND);
            };
            assertThat(parts).isEqualTo(expected);
        }
    }

    @Test
    void aFigureMustBeFiniteAndAParagraphNeedsAFinding() {
        assertThatThrownBy(() -> FindingValue.stated("x", Double.NaN, Unit.VOLT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Paragraph(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThat(Paragraph.of(List.of())).isEmpty();
        assertThat(Paragraph.of(List.of(new Headroom(SUBJECT, value(1, Unit.VOLT, 0), 2))))
                .hasSize(1);
    }
}
