package clipwitness.batch;

import clipwitness.batch.load.Sha256;
import clipwitness.job.Job;
import clipwitness.report.data.ResultsAgreement;
import clipwitness.report.data.ResultsDocument;
import clipwitness.report.evidence.PaperFile;
import clipwitness.report.evidence.SealCheck;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a report says of itself: its signature, its attachments, and whether these agree with each other. */
final class PaperAlone {
    private static final String JSON = "-results.json";
    private static final String CSV = "-results.csv";
    private static final int IDENTITY_DIGITS = 32;
    private static final int MOST_NAMED = 5;

    private final PaperFile paper;
    private final Verification verification;

    PaperAlone(PaperFile paper, Verification verification) {
        this.paper = paper;
        this.verification = verification;
    }

    /** Looks; gives the results that are attached, where they can be read. */
    Optional<ResultsDocument> check() {
        paper.seal().ifPresentOrElse(this::seal, () -> verification.note("The report is not signed."));
        paper.faults().forEach(f -> verification.differs(f + "."));
        Optional<String> name = attachment(JSON);
        Optional<ResultsDocument> results =
                name.flatMap(n -> ResultsDocument.of(paper.attachments().get(n)));
        if (results.isEmpty()) {
            verification.open(
                    name.isEmpty()
                            ? "The results are not attached, so nothing can be compared. A report carries them unless its sheet says otherwise under attach."
                            : name.get() + ": the attachment holds no results of this program.");
            return results;
        }
        digests(name.get(), results.get());
        table(name.get(), results.get());
        inputs(results.get());
        return results;
    }

    private void seal(SealCheck seal) {
        String signer = "'" + seal.signer() + "'";
        switch (seal.state()) {
            case HOLDS -> {
                verification.holds("The signature of " + signer + " holds: nothing was changed after it was made.");
                verification.note("Whether the certificate is that of the shop, only the shop can say: it is valid "
                        + seal.validity() + ", SHA-256 " + seal.fingerprint() + ".");
            }
            case BROKEN ->
                verification.differs(
                        "The signature of " + signer + " does not hold: the report was changed after it was signed.");
            default ->
                verification.note("Another program put a signature on the report"
                        + (seal.signer().isEmpty() ? "" : ", " + signer)
                        + ". This program does not check it; a PDF reader does.");
        }
    }

    /** The one attachment with such an ending. */
    private Optional<String> attachment(String ending) {
        List<String> names = paper.attachments().keySet().stream()
                .filter(n -> n.endsWith(ending))
                .toList();
        return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
    }

    private void digests(String name, ResultsDocument results) {
        String digest = results.inputsDigest();
        boolean same =
                digest.length() > IDENTITY_DIGITS && paper.identity().equals(digest.substring(0, IDENTITY_DIGITS));
        if (!same) {
            verification.differs(
                    name
                            + ": the digest of the inputs is not that of the PDF. The attachment belongs to another report, or was changed.");
        } else {
            verification.holds(name + ": the digest of the inputs is that of the PDF.");
        }
        if (!name.equals(results.number() + JSON)) {
            verification.differs(name + ": the results in it are those of report " + results.number() + ".");
        }
    }

    private void table(String name, ResultsDocument results) {
        Optional<String> table = attachment(CSV);
        if (table.isEmpty()) {
            verification.note("There is no table of results beside " + name + ".");
            return;
        }
        List<String> faults =
                ResultsAgreement.faults(results, paper.attachments().get(table.get()));
        if (faults.isEmpty()) {
            verification.holds(table.get() + ": the figures of captures and comparisons are those of " + name + ".");
        }
        few(verification, table.get() + " and " + name + " differ: ", faults);
    }

    private void inputs(ResultsDocument results) {
        Map<String, String> inputs = results.inputs();
        for (String file : List.of(Job.SHEET_FILE, Job.TABLE_FILE)) {
            byte[] attached = paper.attachments().get(file);
            if (attached != null && inputs.containsKey(file)) {
                if (Sha256.of(attached).equals(inputs.get(file))) {
                    verification.holds(file + ": the attached one is the one that the results were made from.");
                } else {
                    verification.differs(file + ": the attached one is not the one that the results were made from.");
                }
            }
        }
        results.contradictions()
                .forEach(f -> verification.differs(f + ": the results state two different SHA-256 of this file."));
        if (results.listsAllInputs()) {
            if (Sha256.over(results.listed()).equals(results.inputsDigest())) {
                verification.holds("The digest of the inputs is the one over the SHA-256 of all " + inputs.size()
                        + " files that the results list.");
            } else {
                verification.differs(
                        "The digest of the inputs is not the one over the SHA-256 of the files that the results list: one of them was changed.");
            }
        }
    }

    /** States the first of many faults, and how many more there are. */
    static void few(Verification verification, String lead, List<String> faults) {
        faults.stream().limit(MOST_NAMED).forEach(f -> verification.differs(lead + f + "."));
        if (faults.size() > MOST_NAMED) {
            verification.differs(lead + (faults.size() - MOST_NAMED) + " more.");
        }
    }
}
