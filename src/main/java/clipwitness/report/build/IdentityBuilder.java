package clipwitness.report.build;

import clipwitness.compare.result.JobResults;
import clipwitness.job.JobSheet;
import clipwitness.job.Paper;
import clipwitness.job.ReportInfo;
import clipwitness.job.UnitUnderTest;
import clipwitness.report.model.Fact;
import clipwitness.report.model.IdentityPart;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What the report is and about what, from the job sheet. */
final class IdentityBuilder {
    private final JobWording wording;

    IdentityBuilder(JobWording wording) {
        this.wording = wording;
    }

    IdentityPart of(JobResults results, String logo, String software) {
        JobSheet sheet = results.job().sheet();
        ReportInfo info = sheet.report();
        return new IdentityPart(
                info.number(),
                info.title().isEmpty() ? sheet.unit().name() : info.title(),
                info.date().toString(),
                info.received().map(Object::toString).orElse(""),
                amended(info),
                info.language(),
                info.paper() == Paper.LETTER ? "letter" : "A4",
                sheet.shop().name(),
                split(sheet.shop().contact(), "\\R|;|,\\s"),
                logo,
                sheet.shop().technician(),
                sheet.customer(),
                sheet.unit().name(),
                unit(sheet.unit()),
                split(sheet.work(), "\\R\\s*\\R"),
                software,
                results.inputsDigest());
    }

    private String amended(ReportInfo info) {
        String revision =
                info.revision().isPresent() ? Integer.toString(info.revision().getAsInt()) : "";
        if (info.replaces().isEmpty()) {
            return revision.isEmpty() ? "" : wording.say("amended", "revision", revision);
        }
        String replaces = info.replaces().get();
        return revision.isEmpty()
                ? wording.say("amended.replaces", "replaces", replaces)
                : wording.say("amended.both", "revision", revision, "replaces", replaces);
    }

    private List<Fact> unit(UnitUnderTest unit) {
        List<Fact> facts = new ArrayList<>();
        add(facts, "unit.maker", unit.maker());
        add(facts, "unit.serial", unit.serial());
        add(facts, "unit.supply", unit.supply());
        return facts;
    }

    private void add(List<Fact> facts, String name, String text) {
        if (!text.isBlank()) {
            facts.add(new Fact(wording.say(name), text));
        }
    }

    private static List<String> split(String text, String separator) {
        return Arrays.stream(text.split(separator))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .toList();
    }
}
