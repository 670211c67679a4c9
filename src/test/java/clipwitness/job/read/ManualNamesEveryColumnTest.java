package clipwitness.job.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ManualNamesEveryColumnTest {
    @Test
    void thePageOfTheSheetNamesEveryColumnOfTheTable() throws IOException {
        String page = Files.readString(Path.of("src/site/markdown/job-sheet.md"));
        String table = page.substring(page.indexOf("# The captures table"));
        assertThat(TableColumn.codes()).allMatch(code -> table.contains("`" + code + "`"));
    }
}
