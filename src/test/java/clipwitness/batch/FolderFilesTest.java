package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderFilesTest {
    @TempDir
    private Path temp;

    @Test
    void filesStandInTheOrderInWhichPeopleCount() throws IOException, InputException {
        for (String name :
                List.of("gain 100.csv", "gain 5.csv", "Gain 50.csv", "gain 5 (2).csv", "a/2.csv", "a/10.csv")) {
            file(name);
        }
        assertThat(files().candidates())
                .containsExactly("a/2.csv", "a/10.csv", "gain 5.csv", "gain 5 (2).csv", "Gain 50.csv", "gain 100.csv");
    }

    @Test
    void linksThatLeadOutAndNamesThatNoTableHoldsAreLeft() throws IOException, InputException {
        Path folder = Files.createDirectory(temp.resolve("job"));
        Path outside = Files.writeString(temp.resolve("outside.csv"), "t,v\n");
        Files.createSymbolicLink(folder.resolve("leads out.csv"), outside);
        Files.createSymbolicLink(folder.resolve("nowhere.csv"), temp.resolve("gone.csv"));
        Files.createSymbolicLink(folder.resolve("inside.csv"), Files.writeString(folder.resolve("real.csv"), "t,v\n"));
        Files.writeString(folder.resolve("two\nlines.csv"), "t,v\n");
        Files.writeString(folder.resolve("back\\slash.csv"), "t,v\n");
        Files.writeString(folder.resolve(" blank.csv"), "t,v\n");
        FolderFiles files = FolderFiles.of(folder);
        assertThat(files.candidates()).containsExactly("inside.csv", "real.csv");
        assertThat(files.left().keySet())
                .containsExactlyInAnyOrder(
                        "leads out.csv", "nowhere.csv", "two lines.csv", "back\\slash.csv", "blank.csv");
    }

    @Test
    void resultsOfTheProgramAndOtherJobsAreLeft() throws IOException, InputException {
        file("Report/old.csv");
        file("other/job.yaml");
        file("other/a.csv");
        file(".git/b.csv");
        file(
                "J-1-results.csv",
                "section,state,against,file,quantity,order,gainPercent,frequency,level,setting,value,unit,"
                        + "expandedUncertainty,limit,decision,reason\n");
        file("c.csv");
        FolderFiles files = files();
        assertThat(files.candidates()).contains("c.csv").doesNotContain("other/a.csv", "Report/old.csv", ".git/b.csv");
        assertThat(files.left())
                .contains(
                        Map.entry("Report/", "a folder of results, which is never read as input"),
                        Map.entry("other/", "a job of its own"),
                        Map.entry(".git/", "a hidden folder"));
    }

    private FolderFiles files() throws InputException {
        return FolderFiles.of(temp);
    }

    private void file(String name) throws IOException {
        file(name, "t,v\n");
    }

    private void file(String name, String text) throws IOException {
        Path file = temp.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
