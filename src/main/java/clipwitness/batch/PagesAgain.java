package clipwitness.batch;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.report.AttachedFile;
import clipwitness.report.Printing;
import clipwitness.report.ReportDocument;
import clipwitness.report.evidence.PageDifference;
import clipwitness.report.evidence.PaperFile;
import clipwitness.report.page.PageBudget;
import clipwitness.report.page.TemplateSource;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Prints a report again from its results, with the attachments that it has, and compares the two. */
final class PagesAgain {
    /** Share of the lines that a report and the same report in another template never have in common. */
    private static final double LIKE = 0.5;

    /** Share from which on no other template needs to be tried. */
    private static final double VERY_LIKE = 0.9;

    private final PaperFile paper;
    private final boolean sameProgram;
    private final List<String> made;
    private final Verification verification;

    /**
     * A comparison.
     *
     * @param sameProgram whether this version of the program made the report: another one may word and draw otherwise
     * @param made        keys of the templates of the run that made it ({@link TemplateKey}); an earlier version did not state them
     */
    PagesAgain(PaperFile paper, boolean sameProgram, List<String> made, Verification verification) {
        this.paper = paper;
        this.sameProgram = sameProgram;
        this.made = made;
        this.verification = verification;
    }

    /**
     * Tries the sheet's template first, then the built-in ones: results say which templates a run had, not which of them made this document. Where one of
     * these is not here any more, as it was, a difference says nothing.
     */
    void check(JobResults results) {
        byte[] said = paper.unsigned();
        Optional<byte[]> nearest = Optional.empty();
        double most = LIKE;
        Iterator<String> templates = templates(results).iterator();
        while (most < VERY_LIKE && templates.hasNext()) {
            String template = templates.next();
            Optional<byte[]> printed = printed(results, template);
            if (printed.isPresent() && Arrays.equals(said, printed.get())) {
                verification.holds(
                        "The pages, printed again with the template " + template + ", are the same byte by byte.");
                return;
            }
            double common =
                    printed.map(p -> PageDifference.commonLines(said, p)).orElse(0.0);
            if (common > most) {
                most = common;
                nearest = printed;
            }
        }
        if (nearest.isEmpty()) {
            verification.open(
                    "The report is not as the sheet's template or a built-in one prints it: the template that made it is not here, or was"
                            + " changed. Name it on the sheet, or compare the pages by eye.");
            return;
        }
        Optional<String> difference = PageDifference.between(said, nearest.get());
        if (difference.isEmpty()) {
            verification.holds(
                    "The pages, printed again, hold the same text, lines and pictures; only the packing of the file is another.");
        } else {
            differs(results, difference.get());
        }
    }

    private void differs(JobResults results, String difference) {
        if (!sameProgram) {
            verification.open("This version prints the pages otherwise (" + difference
                    + "). Whether they were changed, " + paper.software() + " can say.");
            return;
        }
        absent(results)
                .ifPresentOrElse(
                        template -> verification.open(
                                "The pages are not as "
                                        + String.join(", ", templates(results)) + " print them (" + difference
                                        + "). The report may have been made with the template " + template
                                        + ", which is not here or was changed since. Name it on the sheet, as it was then, and verify again."),
                        () -> verification.differs("The report differs from what the data give: " + difference + "."));
    }

    /** A template of the run that made the report that is not among those that are here. */
    private Optional<String> absent(JobResults results) {
        Set<String> here = new LinkedHashSet<>();
        for (String name : templates(results)) {
            try {
                here.add(TemplateKey.of(TemplateSource.find(name, results.job().folder())));
            } catch (InputException | UncheckedIOException e) {
                here.add(name);
            }
        }
        return made.stream()
                .filter(m -> !here.contains(m))
                .map(m -> m.replaceFirst(" [0-9a-f]{64}$", ""))
                .findFirst();
    }

    private static Set<String> templates(JobResults results) {
        Set<String> templates = new LinkedHashSet<>();
        templates.add(results.job().sheet().report().template());
        templates.addAll(TemplateSource.builtIn());
        return templates;
    }

    private Optional<byte[]> printed(JobResults results, String name) {
        List<AttachedFile> attached = new ArrayList<>();
        paper.attachments().forEach((file, content) -> attached.add(new AttachedFile(file, content)));
        try {
            TemplateSource template = TemplateSource.find(name, results.job().folder());
            return Optional.of(ReportDocument.render(
                    results,
                    ReportDocument.figures(results, template),
                    template,
                    new Printing(attached, paper.software(), PageBudget.USUAL, warning -> {})));
        } catch (InputException e) { // a template that cannot be used has not made the report
            return Optional.empty();
        }
    }
}
