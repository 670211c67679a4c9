package clipwitness.job;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.TestJob;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Every message about a sheet or a table, whole; the cases stand in the files named below. */
class RefusalsTest {
    private static final String TABLE_SHEET =
            "settings: {noon: all at noon, bright: tone up}\nbench: {instruments: [{name: scope}]}\n";

    @TempDir
    Path folder;

    @TestFactory
    List<DynamicTest> faultsOfTheSheet() throws IOException {
        return tests("sheet-refusals.yaml");
    }

    @TestFactory
    List<DynamicTest> faultsOfTheTable() throws IOException {
        return tests("table-refusals.yaml");
    }

    @TestFactory
    List<DynamicTest> sheetsThatAreNone() throws IOException {
        return tests("syntax-refusals.yaml");
    }

    private List<DynamicTest> tests(String file) throws IOException {
        return cases(file).stream()
                .map(c -> DynamicTest.dynamicTest((String) c.get("id"), () -> check(c)))
                .toList();
    }

    private void check(Map<String, ?> c) throws IOException {
        Path own = folder.resolve(Integer.toHexString(c.hashCode()));
        assertThat(own.toFile().mkdir()).isTrue();
        TestJob job = TestJob.in(own);
        if (c.containsKey("text")) {
            job.write("job.yaml", (String) c.get("text"));
        } else if (c.containsKey("table")) {
            job.sheet(c.containsKey("sheet") ? (String) c.get("sheet") : TABLE_SHEET)
                    .table((String) c.get("table"));
        } else {
            job.sheet((String) c.get("sheet"));
        }
        assertThat(job.messages()).isEqualTo(c.get("says"));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, ?>> cases(String file) throws IOException {
        try (InputStream in = RefusalsTest.class.getResourceAsStream(file)) {
            return (List<Map<String, ?>>) new Load(LoadSettings.builder().build()).loadFromInputStream(in);
        }
    }
}
