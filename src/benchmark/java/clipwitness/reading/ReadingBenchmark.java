package clipwitness.reading;

import clipwitness.capture.Export;
import clipwitness.fault.InputException;
import clipwitness.reading.file.Head;
import clipwitness.reading.file.Notes;
import clipwitness.reading.file.SourceFile;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.DialectFinder;
import clipwitness.reading.layout.Header;
import clipwitness.reading.rows.DataPass;
import clipwitness.reading.rows.Room;
import clipwitness.reading.rows.RowPlan;
import clipwitness.reading.rows.Split;
import clipwitness.reading.rows.Work;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Reads ten million rows of two columns from the page cache: our reader on one core and on all, and a plain reader of CSV. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ReadingBenchmark {
    /** Rows of the export. */
    @Param("10000000")
    public int rows;

    private Path file;

    /** Writes the export. */
    @Setup
    public void write() throws IOException {
        file = LongExport.written(Path.of("target/benchmark/" + rows + ".csv"), rows);
    }

    /** The whole of our reader, layout, units and time axis included. */
    @Benchmark
    public Export onOneCore() throws InputException {
        return read(onOne());
    }

    /** The same on all cores. */
    @Benchmark
    public Export onAllCores() throws InputException {
        return read(Work.ofMachine(Progress.NONE::advance));
    }

    /** The parse alone, from bytes to columns of numbers, on one core; time axis, extremes and doubts are left out. */
    @Benchmark
    public Object parseOnOneCore() throws InputException {
        return parse(onOne());
    }

    /** The parse alone on all cores. */
    @Benchmark
    public Object parseOnAllCores() throws InputException {
        return parse(Work.ofMachine(Progress.NONE::advance));
    }

    /** A plain read with the library for CSV, every cell a text and then a number. */
    @Benchmark
    public double[][] withCommonsCsv() throws IOException {
        double[][] columns = new double[2][rows];
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            int row = -1; // the names
            for (CSVRecord cells : CSVFormat.DEFAULT.parse(reader)) {
                for (int c = 0; c < columns.length && row >= 0; c++) {
                    columns[c][row] = Double.parseDouble(cells.get(c));
                }
                row++;
            }
            return Arrays.copyOf(columns, columns.length);
        }
    }

    private static Work onOne() {
        return new Work(new Split(1 << 20, 1), Progress.NONE::advance, Room.ofMachine());
    }

    private DataPass parse(Work work) throws InputException {
        SourceFile source = SourceFile.open(file, "long.csv");
        Notes notes = new Notes();
        Head head = Head.of(source);
        DataBlock block = DataBlock.find(source.name(), head.lines(), DialectFinder.find(source.name(), head, notes));
        Columns columns =
                new ColumnUses(block, Header.find(block, notes), Optional.empty(), OptionalDouble.empty(), notes).decide();
        return DataPass.of(source, head, block, RowPlan.of(block, columns.kept(), false), work, notes);
    }

    private Export read(Work work) throws InputException {
        return ExportReader.read(file, "long.csv", ReadingOptions.none(), work);
    }
}
