package clipwitness.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Marks of content on the pages: each stands around something, and each set of properties belongs to one. */
class MarksOfPagesTest {
    private static final Pattern AROUND_NOTHING = Pattern.compile("/Artifact\\s+/\\w+\\s+BDC\\s+EMC\\b");
    private static final Pattern MARK = Pattern.compile("/\\w+\\s+/(\\w+)\\s+BDC\\b");

    static Stream<String> names() {
        return SamplePages.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void noMarkStandsAroundNothingAndNoPropertiesAreLeftOver(String name) throws IOException {
        try (PDDocument document = SamplePages.open(name)) {
            for (PDPage page : document.getPages()) {
                String content = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
                assertThat(AROUND_NOTHING.matcher(content).find()).isFalse();
                assertThat(properties(page)).isEqualTo(named(content)).isNotEmpty();
            }
        }
    }

    private static Set<String> named(String content) {
        return MARK.matcher(content).results().map(MarksOfPagesTest::name).collect(Collectors.toSet());
    }

    private static String name(MatchResult mark) {
        return mark.group(1);
    }

    private static Set<String> properties(PDPage page) {
        COSDictionary held = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
        Set<String> names = new HashSet<>();
        held.keySet().forEach(key -> names.add(key.getName()));
        return names;
    }
}
