package clipwitness.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * An invented export in a random layout, with what it must be read as. Every choice comes from one seed.
 *
 * <p>The layout is made of independent choices: delimiter and decimal mark, quotes, encoding, line end, where the time comes from, how
 * names and units are written, how numbers are written, with or without their unit, what stands in front, and what litters the file.
 */
final class RandomExport {
    private static final String[] PREFIXES = {"", "m", "µ"};

    final List<List<Double>> channels = new ArrayList<>();
    final List<String> names = new ArrayList<>();
    final List<String> units = new ArrayList<>();
    final double interval;
    final boolean timeColumn;
    final int rows;

    private final Random random;
    private final List<String> lines = new ArrayList<>();
    private final char mark;
    private final String delimiter;
    private final boolean quoted;
    private final String unitInside;
    private final String lineEnd;
    private final Charset charset;
    private final boolean byteOrderMark;

    RandomExport(long seed) {
        random = new Random(seed);
        rows = 2 + random.nextInt(60);
        delimiter = pick(",", ";", "\t", " ", "   ", ", ", " ;");
        quoted = !delimiter.isBlank() && random.nextInt(5) == 0;
        unitInside = random.nextInt(6) > 0 ? "no" : delimiter.isBlank() && !delimiter.equals("\t") ? "" : pick("", " ");
        boolean commaMark = !delimiter.contains(",") && random.nextInt(2) == 0;
        mark = commaMark ? ',' : '.';
        lineEnd = pick("\n", "\n", "\r\n", "\r\n", "\r\r\n", "\r");
        charset = Charset.forName(
                pick("UTF-8", "UTF-8", "UTF-8", "UTF-16LE", "UTF-16BE", "ISO-8859-1", "windows-1252", "IBM850"));
        byteOrderMark = charset.name().startsWith("UTF") && random.nextBoolean();
        interval = new BigDecimal(Math.pow(10, -6 + 4 * random.nextDouble()))
                .round(new MathContext(3))
                .doubleValue();
        timeColumn = random.nextInt(3) > 0;
        write();
    }

    byte[] bytes() {
        String text = lines.stream().collect(Collectors.joining(lineEnd)) + (random.nextBoolean() ? lineEnd : "");
        return ((byteOrderMark ? "\ufeff" : "") + text).getBytes(charset);
    }

    String text() {
        return charset + " " + lines.stream().limit(12).collect(Collectors.joining("\n"));
    }

    private void write() {
        int count = 1 + random.nextInt(4);
        boolean index = !timeColumn && random.nextBoolean();
        String timePrefix = timeColumn ? pick(PREFIXES) : "";
        for (int c = 0; c < count; c++) {
            names.add(pick("CH", "Kanal ", "out") + (c + 1));
            units.add(pick(PREFIXES) + "V");
            channels.add(new ArrayList<>());
        }
        if (!timeColumn) {
            writeSampling();
        } else if (random.nextInt(3) == 0) {
            lines.add(pick("# recorded on the bench", "Remark: none", "Level: -12" + mark + "0mV"));
        }
        if (random.nextInt(3) == 0) {
            lines.add("");
        }
        writeHeader(index, timePrefix);
        writeRows(index, timePrefix);
    }

    private void writeSampling() {
        String written = plain(interval);
        String rate = plain(1 / interval);
        lines.add(pick(
                "# sample rate: " + rate + " Hz",
                "Sampling period: " + written + " s",
                "Sample interval = " + plain(interval * 1e3) + " ms",
                "SampleRate: " + plain(1 / interval / 1e3) + "kS/s"));
    }

    private void writeHeader(boolean index, String timePrefix) {
        List<String> heads = new ArrayList<>(names);
        List<String> unitRow = new ArrayList<>(units);
        if (timeColumn) {
            heads.add(0, pick("Time", "t", "Zeit"));
            unitRow.add(0, timePrefix + "s");
        } else if (index) {
            heads.add(0, pick("n", "Index"));
            unitRow.add(0, "");
        }
        boolean blanks = delimiter.isBlank() && !delimiter.equals("\t");
        int style = blanks ? 4 : random.nextInt(5);
        if (style == 0 || style == 1) {
            lines.add(row(style == 0 ? heads : unitRow));
            lines.add(row(style == 0 ? unitRow : heads));
            return;
        }
        String[] forms = {"%s (%s)", "%s [%s]", "%s in %s", "%s/%s", "%s(%s)"};
        String form = style == 4 ? (blanks ? "%s(%s)" : pick(forms)) : forms[style];
        lines.add(row(IntStream.range(0, heads.size())
                .mapToObj(i -> unitRow.get(i).isEmpty()
                        ? heads.get(i)
                        : String.format(Locale.ROOT, form, heads.get(i), unitRow.get(i)))
                .map(h -> blanks ? h.replace(" ", "_") : h)
                .toList()));
        if (blanks) {
            names.replaceAll(n -> n.replace(" ", "_"));
        }
    }

    private void writeRows(boolean index, String timePrefix) {
        boolean trailing = !delimiter.isBlank() && random.nextInt(4) == 0;
        boolean litter = random.nextInt(5) == 0;
        boolean gaps = random.nextInt(4) == 0;
        String exponent = unitInside.equals("no") ? pick("", "", "E", "e", "D") : pick("", "E");
        double amplitude = Math.pow(10, 3 * random.nextDouble());
        for (int r = 0; r < rows; r++) {
            List<String> cells = new ArrayList<>();
            if (timeColumn) {
                cells.add(plain((r - 7) * interval / scale(timePrefix)));
            } else if (index) {
                cells.add(Integer.toString(r));
            }
            for (int c = 0; c < names.size(); c++) {
                boolean gap = gaps && r > 0 && r < rows - 1 && random.nextInt(10) == 0;
                cells.add(
                        gap
                                ? pick("****", "NaN", "OL", "9.9e37".replace('.', mark), "-inf")
                                : number(amplitude, exponent, c));
                if (gap) {
                    channels.get(c).add(Double.NaN);
                }
            }
            lines.add(row(cells) + (trailing ? delimiter : ""));
            if (litter && random.nextInt(6) == 0) {
                lines.add("");
            }
        }
    }

    private String number(double amplitude, String exponent, int channel) {
        BigDecimal value =
                new BigDecimal(amplitude * random.nextGaussian()).round(new MathContext(5 + random.nextInt(8)));
        channels.get(channel).add(value.doubleValue() * scale(units.get(channel).replace("V", "")));
        String text =
                exponent.isEmpty() ? value.toPlainString() : scientific(value).replace("E", exponent);
        String inside = unitInside.equals("no") ? "" : unitInside + units.get(channel);
        return (random.nextInt(9) == 0 && value.signum() > 0 ? "+" : "") + text.replace('.', mark) + inside;
    }

    private static String scientific(BigDecimal value) {
        int power = value.precision() - value.scale() - 1;
        return value.movePointLeft(power).toPlainString() + "E" + (power < 0 ? "-" : "+")
                + String.format(Locale.ROOT, "%02d", Math.abs(power));
    }

    private String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(10))
                .stripTrailingZeros()
                .toPlainString()
                .replace('.', mark);
    }

    private String row(List<String> cells) {
        return cells.stream().map(c -> quoted ? '"' + c + '"' : c).collect(Collectors.joining(delimiter));
    }

    private static double scale(String prefix) {
        return prefix.equals("m") ? 1e-3 : prefix.equals("µ") ? 1e-6 : 1;
    }

    private String pick(String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
