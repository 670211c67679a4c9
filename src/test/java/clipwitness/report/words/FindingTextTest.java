package clipwitness.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Pictured;
import clipwitness.compare.finding.Remainders;
import clipwitness.fixture.ExampleJob;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FindingTextTest {
    /** A kind of finding that nobody words would be missing on the page without a sign. */
    @Test
    void everyKindOfFindingHasItsWordsOnThePageOrWithItsPicture() {
        FindingText texts = new FindingText(Sentences.wording(ExampleJob.good().results()));
        Set<Class<?>> worded = new LinkedHashSet<>(texts.kinds());
        worded.add(Pictured.class);
        worded.add(Remainders.class);
        assertThat(worded).containsExactlyInAnyOrder(Finding.class.getPermittedSubclasses());
        assertThat(Arrays.stream(Finding.class.getPermittedSubclasses())).allMatch(Class::isRecord);
    }
}
