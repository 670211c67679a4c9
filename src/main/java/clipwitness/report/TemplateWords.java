package clipwitness.report;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.Job;
import clipwitness.report.page.TemplateSource;
import clipwitness.words.WordBundle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words of a report: the program's own in the language of the report, some of them reworded by the template. */
final class TemplateWords {
    private TemplateWords() {}

    /**
     * The words.
     *
     * @param template template in the language of the job's report
     * @throws InputException if the template's words have a fault, or the template has none in this language
     */
    static WordBundle of(TemplateSource template, Job job) throws InputException {
        String wanted = job.sheet().report().language();
        WordBundle words = inLanguage(template, wanted);
        Optional<TemplateSource.WordFile> own = template.ownWords();
        if (own.isPresent()) {
            if (!own.get().ofReport()) {
                checkLanguage(template, WordBundle.of(own.get().text()), words, job);
            }
            words = words.reworded(own.get().text(), own.get().name());
        }
        if (!words.speaks(wanted)) {
            throw refusal(
                    job,
                    "the template " + template.name() + " has no words in " + wanted,
                    "Its words are in " + String.join(" and ", languages(template, words))
                            + ": write one of these as the language, or name a template folder whose words.properties has the line language = "
                            + wanted);
        }
        return words;
    }

    private static List<String> languages(TemplateSource template, WordBundle words) {
        return template.isBuiltIn() ? TemplateSource.languages() : List.of(words.language());
    }

    private static WordBundle inLanguage(TemplateSource template, String wanted) throws InputException {
        WordBundle english = WordBundle.builtIn();
        Optional<TemplateSource.WordFile> file = template.commonWords();
        return english.speaks(wanted) || file.isEmpty()
                ? english
                : english.reworded(file.get().text(), file.get().name());
    }

    /** The sentences of one language must not stand between those of another; a file that does not name its language is in English. */
    private static void checkLanguage(TemplateSource template, WordBundle own, WordBundle words, Job job)
            throws InputException {
        String wanted = job.sheet().report().language();
        WordBundle english = WordBundle.builtIn();
        String written = own.namesLanguage() ? own.language() : english.language();
        if (!own.isEmpty() && words.speaks(wanted) && !words.speaks(written)) {
            throw refusal(
                    job,
                    "the template " + template.name() + " words its sentences in " + written + ", not in " + wanted,
                    "Write language: " + written + ", or put the sentences in the report's language into a file words-"
                            + Locale.forLanguageTag(wanted).getLanguage() + ".properties in the template's folder");
        }
    }

    private static InputException refusal(Job job, String what, String remedy) {
        return new InputException(
                ErrorCode.NO_TEMPLATE,
                new Origin(job.folder().resolve(Job.SHEET_FILE).toString(), 0, "report.language"),
                what,
                remedy);
    }
}
