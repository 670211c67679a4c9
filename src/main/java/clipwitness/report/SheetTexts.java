package clipwitness.report;

import clipwitness.fault.Origin;
import clipwitness.job.CaptureRow;
import clipwitness.job.Instrument;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.Photo;
import clipwitness.job.Rail;
import java.util.LinkedHashMap;
import java.util.Map;

/** The texts of a job that a report prints as they stand, with the place of each. */
final class SheetTexts {
    private final Map<Origin, String> texts = new LinkedHashMap<>();
    private final String sheetFile;
    private final String tableFile;

    private SheetTexts(Job job) {
        this.sheetFile = job.folder().resolve(Job.SHEET_FILE).toString();
        this.tableFile = job.folder().resolve(Job.TABLE_FILE).toString();
        head(job.sheet());
        job.sheet().settings().forEach((name, text) -> sheet("settings." + name, name + text));
        job.sheet().states().forEach(s -> sheet("states." + s.name() + ".label", s.label()));
        lists(job.sheet());
        job.captures().forEach(this::row);
    }

    /** The texts by place, in the sheet's order, then the table's. */
    static Map<Origin, String> of(Job job) {
        return new SheetTexts(job).texts;
    }

    private void head(JobSheet sheet) {
        sheet("report.title", sheet.report().title());
        sheet("shop.name", sheet.shop().name());
        sheet("shop.contact", sheet.shop().contact());
        sheet("shop.technician", sheet.shop().technician());
        sheet("customer", sheet.customer());
        sheet("unit.name", sheet.unit().name());
        sheet("unit.maker", sheet.unit().maker());
        sheet("unit.serial", sheet.unit().serial());
        sheet("unit.supply", sheet.unit().supply());
        sheet("work", sheet.work());
        sheet("stimulus.shape", sheet.stimulus().shape());
    }

    private void lists(JobSheet sheet) {
        int number = 1;
        for (Instrument instrument : sheet.bench().instruments()) {
            sheet("bench.instruments[" + number++ + "]", instrument.name() + instrument.what() + instrument.serial());
        }
        number = 1;
        for (Rail rail : sheet.rails()) {
            sheet("rails[" + number++ + "].name", rail.name());
        }
        number = 1;
        for (Photo photo : sheet.photos()) {
            sheet("photos[" + number++ + "].caption", photo.caption());
        }
    }

    private void row(CaptureRow row) {
        texts.put(
                new Origin(tableFile, row.row(), "file"),
                row.file() + row.inputFile().orElse(""));
        texts.put(new Origin(tableFile, row.row(), "device"), row.device().orElse(""));
        texts.put(new Origin(tableFile, row.row(), "note"), row.note());
    }

    private void sheet(String key, String text) {
        texts.put(new Origin(sheetFile, 0, key), text);
    }
}
