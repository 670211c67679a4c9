package clipwitness.reading;

import clipwitness.capture.Export;
import clipwitness.fault.InputException;
import clipwitness.reading.file.ForeignFormat;
import clipwitness.reading.file.Head;
import clipwitness.reading.file.Notes;
import clipwitness.reading.file.SourceFile;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.DialectFinder;
import clipwitness.reading.layout.Header;
import clipwitness.reading.layout.LinesBetween;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.RowStyle;
import clipwitness.reading.rows.Work;
import clipwitness.reading.sound.SoundFile;
import clipwitness.reading.time.FurtherTimes;
import clipwitness.reading.time.Restarts;
import clipwitness.reading.time.Sampling;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletionException;

/** Reads an export of an oscilloscope, a recorder or a curve tracer, of whatever text layout, or a sound file. */
public final class ExportReader {
    private final SourceFile file;
    private final ReadingOptions options;
    private final Work work;
    private final Notes notes = new Notes();

    private ExportReader(SourceFile file, ReadingOptions options, Work work) {
        this.file = file;
        this.options = options;
        this.work = work;
    }

    /**
     * Reads a file. Layout, units and time axis are decided once, from the file alone unless the options say more.
     *
     * @param file          where the file lies
     * @param nameAsWritten its name in messages
     * @param options       what the user says about it
     * @return a record over time or a curve, values in V and A
     * @throws InputException if the file is no export, a row cannot be read, or a figure is missing without which nothing can be
     *     measured
     */
    public static Export read(Path file, String nameAsWritten, ReadingOptions options) throws InputException {
        return read(file, nameAsWritten, options, Progress.NONE);
    }

    /**
     * Reads a file, as {@link #read(Path, String, ReadingOptions)} does, and reports its progress.
     *
     * @param progress told how far the reading has come
     */
    public static Export read(Path file, String nameAsWritten, ReadingOptions options, Progress progress)
            throws InputException {
        return read(file, nameAsWritten, options, Work.ofMachine(progress::advance));
    }

    /**
     * Reads a file, as {@link #read(Path, String, ReadingOptions, Progress)} does, and digests it.
     *
     * @param digest takes the bytes that were read
     * @throws InputException also if the file is no longer what was read
     */
    public static Export read(
            Path file, String nameAsWritten, ReadingOptions options, Progress progress, MessageDigest digest)
            throws InputException {
        SourceFile source = SourceFile.openForDigest(file, nameAsWritten);
        Export export = watched(source, options, Work.ofMachine(progress::advance));
        source.digest(digest);
        return export;
    }

    /** Reads a file, worked through as the caller wants it. */
    static Export read(Path file, String nameAsWritten, ReadingOptions options, Work work) throws InputException {
        SourceFile source = SourceFile.open(file, nameAsWritten);
        Export export = watched(source, options, work);
        Optional<InputException> changed = source.changed();
        if (changed.isPresent()) {
            throw changed.get();
        }
        return export;
    }

    /** Reads a file; of one that was changed meanwhile the message says only that. */
    private static Export watched(SourceFile source, ReadingOptions options, Work work) throws InputException {
        try {
            return new ExportReader(source, options, work).read();
        } catch (InputException e) {
            throw source.changed().orElse(e);
        } catch (InternalError | CompletionException e) { // how the machine says that a mapped file was cut
            if (e instanceof InternalError || e.getCause() instanceof InternalError) {
                throw source.changed().orElseGet(() -> SourceFile.changedMeanwhile(source.name()));
            }
            throw e;
        }
    }

    private Export read() throws InputException {
        if (SoundFile.isOne(file.head())) {
            return SoundExport.read(file, options, notes);
        }
        ForeignFormat.refuse(file);
        notes.evidence(file.encoding().evidence());
        Head head = Head.of(file);
        RowStyle style = DialectFinder.find(file.name(), head, notes);
        DataBlock block = DataBlock.find(file.name(), head.lines(), style);
        LinesBetween.refuseMarks(file.name(), block.before());
        notes.evidence(LayoutRemark.SAMPLES_FROM, Argument.count(block.firstLine()));
        UserUnits units = new UserUnits(file.name(), options);
        Header header = units.over(Header.find(block, notes), block);
        Preamble preamble = Preamble.of(block.before(), block.dialect())
                .with(header.facts())
                .with(block.besideRows());
        Optional<Sampling> sampling = Sampling.of(preamble);
        boolean intervalGiven = options.interval().isPresent();
        Columns columns = units.over(new ColumnUses(block, header, sampling, options.interval(), notes).decide());
        OtherTables.refuse(file.name(), columns, preamble, sampling.isPresent() || intervalGiven);
        OptionalDouble stated =
                sampling.stream().mapToDouble(Sampling::interval).findFirst();
        Restarts.refuse(file.name(), block, columns, intervalGiven ? options.interval() : stated);
        FurtherTimes.check(file.name(), block, columns, notes);
        return new ExportBuilder(file, options, preamble, sampling, notes).build(head, block, columns, work);
    }
}
