package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.bench.circuit.AnswerCircuits;
import clipwitness.bench.circuit.CircuitJob;
import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.FindingValue;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.Findings;
import clipwitness.fault.InputException;
import clipwitness.report.words.FindingText;
import clipwitness.report.words.JobWording;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of invented circuits whose change is known in words, from exports to the sentence. */
class AnswersTest {
    @TempDir
    private Path folder;

    private JobResults captured(CircuitJob job) throws IOException, InputException {
        return CircuitOutcome.of(job, folder.resolve(job.name())).results();
    }

    private static Answer answer(JobResults results) {
        return (Answer) Findings.of(results).all().get(0);
    }

    private static String text(JobResults results) {
        return new FindingText(JobWording.english(results))
                .of(answer(results))
                .orElseThrow()
                .replace('\u00A0', ' ');
    }

    /** Twice the threshold at the same drive leaves less of the wave to clip. */
    @Test
    void clippersThatBeginAtTwiceTheVoltageAreLouderAndGentler() throws IOException, InputException {
        JobResults results = captured(AnswerCircuits.doubled());
        assertThat(answer(results).word()).isEqualTo("gentler");
        assertThat(text(results)).endsWith(": louder, gentler and rounder.");
    }

    /** A wide knee distorts before the sharp one does anything and, driven far, distorts less. */
    @Test
    void aWideKneeInPlaceOfASharpOneIsDifferent() throws IOException, InputException {
        assertThat(answer(captured(AnswerCircuits.wider())).word()).isEqualTo("different");
    }

    /** A quarter of the volume in place of a half: 20 lg 2 = 6.02 dB. */
    @Test
    void theSameClipperBehindAnAttenuatorIsOnlyQuieter() throws IOException, InputException {
        JobResults results = captured(AnswerCircuits.attenuated());
        assertThat(answer(results).word()).isEqualTo("only-level");
        assertThat(text(results)).startsWith("Only quieter. ");
        FindingValue level = answer(results).values().get(0);
        assertThat(level.value())
                .isCloseTo(-6.02, within(level.expandedUncertainty().orElseThrow()));
    }

    @Test
    void aToneControlThatIsTurnedDownMakesItGentlerAndRounder() throws IOException, InputException {
        JobResults results = captured(AnswerCircuits.darker());
        assertThat(answer(results).word()).isEqualTo("gentler");
        assertThat(text(results)).endsWith("gentler and rounder.");
    }

    @Test
    void withoutClippersAndWithAmpleSupplyItIsClean() throws IOException, InputException {
        JobResults results = captured(AnswerCircuits.lifted());
        assertThat(answer(results).word()).isEqualTo("clean");
        assertThat(text(results)).endsWith("stays under 1 % at every setting captured: clean.");
    }
}
