package footing.io.answer;

import footing.core.ground.Judged;
import java.util.function.Consumer;

/** Writes figures that may lack: {@code {value}}, or {@code {lacks: [paths]}}, or {@code {outside: why}}. */
final class JudgedJson {
    private final JsonText json;

    JudgedJson(JsonText json) {
        this.json = json;
    }

    void number(String name, Judged<Double> judged) {
        write(name, judged, x -> json.number("value", x));
    }

    /** A figure of several parts. */
    <T> void write(String name, Judged<T> judged, Consumer<T> inside) {
        json.object(name, () -> {
            if (judged instanceof Judged.Known<T> known) {
                inside.accept(known.known());
            } else if (judged instanceof Judged.Lacks<T> lacks) {
                json.array("lacks", () -> lacks.needed().forEach(json::text));
            } else if (judged instanceof Judged.Outside<T> outside) {
                json.text("outside", outside.why());
            }
        });
    }
}
