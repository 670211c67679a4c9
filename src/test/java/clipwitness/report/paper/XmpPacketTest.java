package clipwitness.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class XmpPacketTest {
    @Test
    void textIsEscapedAndTheDateIsTheSheets() {
        String packet = XmpPacket.of(new DocumentInfo(
                "<b>&\"Ω", "Shop & Sons", "s", "en", LocalDate.of(2026, 5, 4), "clipwitness 0.1.0", "00"));
        assertThat(packet)
                .contains("<rdf:li xml:lang=\"x-default\">&lt;b&gt;&amp;\"Ω</rdf:li>")
                .contains("<rdf:li>Shop &amp; Sons</rdf:li>")
                .contains("<xmp:CreateDate>2026-05-04T00:00:00Z</xmp:CreateDate>")
                .contains("<pdf:Producer>clipwitness 0.1.0</pdf:Producer>");
    }
}
