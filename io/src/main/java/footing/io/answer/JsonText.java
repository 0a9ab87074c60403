package footing.io.answer;

import java.io.Writer;
import java.util.Collection;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * Writes JSON a name and a value at a time. What is no finite number becomes null. Numbers are the shortest that read
 * back the same, on every Java and in every locale.
 */
public final class JsonText implements AutoCloseable {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();

    private final JsonGenerator out;

    public JsonText(Writer to) {
        out = FACTORY.createGenerator(new Indented(), to);
    }

    /** Two spaces a level and a line feed on every system. */
    private static final class Indented extends ObjectWriteContext.Base {
        private final PrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));

        @Override
        public PrettyPrinter getPrettyPrinter() {
            return printer;
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }

    /** A property that is an object. */
    public void object(String name, Runnable inside) {
        out.writeName(name);
        object(inside);
    }

    public void object(Runnable inside) {
        out.writeStartObject();
        inside.run();
        out.writeEndObject();
    }

    /** An object of whatever there is, or null. */
    public <T> void objectOrNull(String name, @Nullable T source, Consumer<T> inside) {
        if (source == null) {
            out.writeNullProperty(name);
        } else {
            object(name, () -> inside.accept(source));
        }
    }

    /** An array of objects. */
    public <T> void objects(String name, Collection<T> sources, Consumer<T> inside) {
        array(name, () -> sources.forEach(s -> object(() -> inside.accept(s))));
    }

    public <T> void objectsOrNull(String name, @Nullable Collection<T> sources, Consumer<T> inside) {
        if (sources == null) {
            out.writeNullProperty(name);
        } else {
            objects(name, sources, inside);
        }
    }

    public void array(String name, Runnable inside) {
        out.writeName(name);
        out.writeStartArray();
        inside.run();
        out.writeEndArray();
    }

    public void text(String name, String value) {
        out.writeStringProperty(name, value);
    }

    public void text(String value) {
        out.writeString(value);
    }

    public void textOrNull(String name, @Nullable String value) {
        if (value == null) {
            out.writeNullProperty(name);
        } else {
            text(name, value);
        }
    }

    public void flag(String name, boolean value) {
        out.writeBooleanProperty(name, value);
    }

    public void whole(String name, long value) {
        out.writeNumberProperty(name, value);
    }

    /** A bare number in an array. */
    public void number(double value) {
        out.writeNumber(value);
    }

    public void number(String name, @Nullable Double value) {
        if (value == null || !(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            out.writeNullProperty(name);
        } else {
            out.writeNumberProperty(name, value.doubleValue());
        }
    }

    @Override
    public void close() {
        out.writeRaw('\n');
        out.close();
    }
}
