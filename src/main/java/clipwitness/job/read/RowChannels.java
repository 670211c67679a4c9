package clipwitness.job.read;

import java.util.Optional;

/**
 * Which channels a row of the captures table names, by name or 1-based number.
 *
 * @param input     input channel
 * @param output    output channel
 * @param inputFile export that holds the input channel, where it is another file
 */
record RowChannels(Optional<String> input, Optional<String> output, Optional<String> inputFile) {
    static RowChannels of(TableRow row, JobFiles files) {
        Optional<Field> input = row.field(TableColumn.INPUT);
        Optional<String> output = row.field(TableColumn.OUTPUT).flatMap(RowChannels::channel);
        Optional<String> inputFile = row.field(TableColumn.INPUT_FILE).flatMap(files::file);
        if (input.isPresent()
                && output.equals(input.map(Field::text))
                && row.text(TableColumn.INPUT_FILE).isEmpty()) {
            input.get().fault("input and output are the same channel", "Name two channels, or leave input empty");
        }
        boolean same = inputFile.isPresent()
                && row.text(TableColumn.FILE).map(f -> f.replace('\\', '/')).equals(inputFile);
        if (same && (input.isEmpty() || output.isEmpty() || output.equals(input.map(Field::text)))) {
            row.field(TableColumn.INPUT_FILE)
                    .orElseThrow()
                    .fault(
                            "the export of the output is named as that of the input, too",
                            "Name the export that holds the input, or leave input-file empty");
        }
        return new RowChannels(input.flatMap(RowChannels::channel), output, inputFile);
    }

    private static Optional<String> channel(Field field) {
        if (field.text().matches("0+")) {
            field.fault("there is no channel 0", "Channels count from 1");
            return Optional.empty();
        }
        return Optional.of(field.text());
    }
}
