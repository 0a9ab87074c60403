package footing.web.answer;

import footing.io.figure.Curve;
import org.springframework.web.util.HtmlUtils;

/**
 * Writes an input: its value or three of them, its unit, where it comes from, what is wrong with it. By hand, as a fleet
 * has hundreds of them and a template takes a millisecond for each. Every text and value is escaped.
 */
final class FieldHtml {
    private final StringBuilder out = new StringBuilder(2_000);
    private final FieldView field;
    private final String address;

    private FieldHtml(FieldView field, String address) {
        this.field = field;
        this.address = address;
    }

    /** {@code address} is where a change of it is sent. */
    static String of(FieldView field, String address) {
        FieldHtml html = new FieldHtml(field, address);
        html.whole();
        return html.out.toString();
    }

    /** Opens an element; attributes are names and values in turn, an empty value leaves its attribute out. */
    private FieldHtml open(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            if (!attributes[i + 1].isEmpty()) {
                out.append(' ').append(attributes[i]).append("=\"");
                out.append(escaped(attributes[i + 1])).append('"');
            }
        }
        out.append('>');
        return this;
    }

    private FieldHtml text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** The marks of the language alone: the page is UTF-8, all else stands as it is. */
    private static String escaped(String text) {
        return HtmlUtils.htmlEscape(text, "UTF-8");
    }

    private FieldHtml close(String element) {
        out.append("</").append(element).append('>');
        return this;
    }

    private void whole() {
        String style = "field" + (field.turns() ? " turns" : "") + (field.isWrong() ? " wrong" : "");
        open("div", "class", style, "id", field.id(), "hx-post", address, "hx-trigger", "change", "hx-include", "this")
                .last("hx-target=\"this\" hx-swap=\"morph\" hx-sync=\"this:queue last\"");
        open("input", "type", "hidden", "name", "path", "value", field.path());
        open("input", "type", "hidden", "name", "turns", "value", Boolean.toString(field.turns()));
        if (field.boxes().size() == 1) {
            one(field.boxes().get(0));
        } else {
            three();
        }
        note();
        close("div");
    }

    /** Puts more attributes, that need no escaping, into the element just opened. */
    private void last(String attributes) {
        out.setLength(out.length() - 1);
        out.append(' ').append(attributes).append('>');
    }

    private String boxId(FieldView.Box box) {
        return field.id() + "-" + box.name();
    }

    private String noteId() {
        return field.id() + "-note";
    }

    private void box(FieldView.Box box, String describedBy) {
        open(
                        "input",
                        "type",
                        "text",
                        "autocomplete",
                        "off",
                        "id",
                        boxId(box),
                        "name",
                        box.name(),
                        "value",
                        box.value(),
                        "aria-describedby",
                        describedBy,
                        "aria-invalid",
                        field.isWrong() ? "true" : "")
                .last("spellcheck=\"false\"");
    }

    private FieldHtml label() {
        open("span").text(field.label()).close("span");
        if (!field.unit().isEmpty()) {
            open("span", "class", "unit").text(", " + field.unit()).close("span");
        }
        return this;
    }

    private void one(FieldView.Box box) {
        open("label", "for", boxId(box)).label().close("label");
        open("div", "class", "boxes");
        box(box, noteId());
        close("div");
    }

    private void three() {
        open("fieldset", "aria-describedby", noteId());
        open("legend").label().close("legend");
        open("div", "class", "boxes three");
        for (FieldView.Box box : field.boxes()) {
            open("div");
            box(box, "");
            open("label", "for", boxId(box)).text(box.label()).close("label").close("div");
        }
        close("div");
        Curve curve = field.curve();
        if (curve != null) {
            curve(curve);
        }
        close("fieldset");
    }

    private void curve(Curve curve) {
        open("svg", "class", "curve", "viewBox", "0 0 100 24", "preserveAspectRatio", "none", "aria-hidden", "true");
        open("path", "d", curve.path()).close("path");
        upright("", "0", String.valueOf(curve.likelyAt()));
        upright("outer", "10", String.valueOf(curve.lowAt()));
        upright("outer", "10", String.valueOf(curve.highAt()));
        close("svg");
    }

    private void upright(String style, String top, String at) {
        open("line", "class", style, "y1", top, "y2", "24", "x1", at, "x2", at).close("line");
    }

    private void note() {
        open("p", "class", "note", "id", noteId());
        if (field.isWrong()) {
            open("span", "class", "faults", "role", "alert")
                    .text(String.join(" ", field.faults()))
                    .close("span")
                    .text(" ");
        }
        open("span", "class", field.guess() ? "from guess" : "from")
                .text(field.provenance())
                .close("span");
        if (!field.hint().isEmpty()) {
            open("span", "class", "hint").text(field.hint()).close("span");
        }
        if (field.turns()) {
            open("strong", "class", "could").text(" could turn the verdict").close("strong");
        }
        if (field.canForget()) {
            text(" ").forget();
        }
        close("p");
    }

    private void forget() {
        open(
                        "button",
                        "type",
                        "button",
                        "class",
                        "link back",
                        "hx-post",
                        address + "/forget",
                        "aria-label",
                        "Take back " + field.label() + " and let a guess stand in")
                .last(
                        "hx-trigger=\"click consume\" hx-include=\"closest .field\" hx-target=\"closest .field\" hx-swap=\"morph\"");
        text("use a guess instead").close("button");
    }
}
