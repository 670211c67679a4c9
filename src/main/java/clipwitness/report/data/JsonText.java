package clipwitness.report.data;

import clipwitness.capture.Condition;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.reason.Doubt;
import clipwitness.reason.Message;
import clipwitness.reason.Reason;
import clipwitness.words.Speech;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * JSON in the shapes that the results share: numbers without NaN or infinity, nulls for what does not apply, measured values with
 * uncertainty or reason.
 */
final class JsonText {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator out;

    private JsonText(JsonGenerator out) {
        this.out = out;
    }

    /** A part of a document. */
    interface Part {
        void write() throws IOException;
    }

    /** A whole document. */
    interface Document {
        void write(JsonText json) throws IOException;
    }

    /** The document as UTF-8 with a line feed at its end. */
    static byte[] bytes(Document document) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
        try (JsonGenerator generator = FACTORY.createGenerator(bytes)) {
            generator.setPrettyPrinter(printer);
            document.write(new JsonText(generator));
            generator.writeRaw('\n');
        } catch (IOException impossible) { // a byte array takes everything
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    void object(Part fields) throws IOException {
        out.writeStartObject();
        fields.write();
        out.writeEndObject();
    }

    void object(String name, Part fields) throws IOException {
        out.writeFieldName(name);
        object(fields);
    }

    void array(Part elements) throws IOException {
        out.writeStartArray();
        elements.write();
        out.writeEndArray();
    }

    void array(String name, Part elements) throws IOException {
        out.writeFieldName(name);
        array(elements);
    }

    void text(String name, String value) throws IOException {
        out.writeStringField(name, value);
    }

    void text(String name, Optional<String> value) throws IOException {
        out.writeFieldName(name);
        if (value.isPresent()) {
            out.writeString(value.get());
        } else {
            out.writeNull();
        }
    }

    void texts(String name, List<String> values) throws IOException {
        array(name, () -> {
            for (String v : values) {
                out.writeString(v);
            }
        });
    }

    void number(String name, double value) throws IOException {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + ", which results never hold");
        }
        out.writeNumberField(name, value + 0.0); // no negative zero
    }

    void number(String name, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            number(name, value.getAsDouble());
        } else {
            out.writeNullField(name);
        }
    }

    void numbers(String name, List<Double> values) throws IOException {
        array(name, () -> {
            for (double v : values) {
                out.writeNumber(v);
            }
        });
    }

    void flag(String name, boolean value) throws IOException {
        out.writeBooleanField(name, value);
    }

    void integer(String name, int value) throws IOException {
        out.writeNumberField(name, value);
    }

    /** The four keys of a condition. */
    void condition(Condition condition) throws IOException {
        number("gainPercent", condition.gainPercent());
        number("frequency", condition.frequency());
        number("level", condition.level());
        text("setting", condition.setting());
    }

    /** A measured value as fields: the value under a name, then unit, uncertainty, and bound or reason. */
    void measured(String name, Measured measured) throws IOException {
        number(name, measured.value());
        text("unit", measured.unit().symbol());
        measuredRest(measured);
    }

    /** A measured value as fields where the unit is fixed by the name. */
    void measuredWithoutUnit(String name, Measured measured) throws IOException {
        number(name, measured.value());
        measuredRest(measured);
    }

    private void measuredRest(Measured measured) throws IOException {
        number("expandedUncertainty", measured.expandedUncertainty());
        reasonOfNone(measured.reason());
        if (measured instanceof Measured.Between between) {
            number("lower", between.lower());
            number("upper", OptionalDouble.of(between.upper()));
        }
        boundOf(measured);
    }

    /** That noise bounds a value; no field where it does not. */
    void boundOf(Measured measured) throws IOException {
        if (measured.asValue().filter(Measured.Value::isUpperBound).isPresent()) {
            text("bound", "upper");
        }
    }

    /** Why there is no value, in words and as a code; no fields where there is one. */
    void reasonOfNone(Optional<Reason> reason) throws IOException {
        if (reason.isPresent()) {
            reason(reason);
        }
    }

    /** The same of a value among several: in words under a name, and as a code under that name with {@code Code} behind it. */
    void reasonOfNone(String name, Optional<Reason> reason) throws IOException {
        if (reason.isPresent()) {
            text(name, Speech.ENGLISH.clause(reason));
            text(name + "Code", reason.map(Reason::resultCode));
        }
    }

    /** A reason in words and as a code, both null where there is none. */
    void reason(Optional<Reason> reason) throws IOException {
        text("reason", Speech.ENGLISH.clause(reason));
        text("reasonCode", reason.map(Reason::resultCode));
    }

    /** A statement in words, null where there is none. */
    void statement(String name, Optional<? extends Message> statement) throws IOException {
        text(name, Speech.ENGLISH.text(statement));
    }

    /** Code, severity and words of a doubt. */
    void doubt(Doubt doubt) throws IOException {
        text("code", doubt.code().code());
        text("severity", doubt.severity().code());
        text("text", Speech.ENGLISH.text(doubt));
    }

    /** The budget of a measured value, largest part first. */
    void budget(Measured measured) throws IOException {
        array("budget", () -> {
            for (Contribution c :
                    measured.asValue().map(Measured.Value::largestFirst).orElse(List.of())) {
                object(() -> {
                    text("source", c.source().code());
                    number("standardUncertainty", c.standardUncertainty());
                    if (Double.isFinite(c.degreesOfFreedom())) {
                        number("degreesOfFreedom", c.degreesOfFreedom());
                    }
                });
            }
        });
    }
}
