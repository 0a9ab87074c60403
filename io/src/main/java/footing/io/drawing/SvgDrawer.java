package footing.io.drawing;

import footing.io.figure.Figure;
import footing.io.figure.FigureJson;
import footing.io.paper.Typefaces;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.Function;
import org.mozilla.javascript.LambdaFunction;
import org.mozilla.javascript.ScriptableObject;

/**
 * Draws figures as SVG by the charting library that the page uses. Loading it takes about a second, a figure some
 * hundredths; load one and keep it. Any thread may use it, one at a time.
 */
public final class SvgDrawer {
    private static final String LIBRARY = "/META-INF/resources/webjars/echarts/5.3.1/dist/echarts.min.js";
    private static final String LOOK = "/static/figure-look.js";
    private static final String TRANSLATION = "/static/figure.js";
    private static final String PAPER = "paper.js";

    private final ScriptableObject scope;
    private final Function draw;

    /** What is drawn and how large, in pixels of 1/96 inch. */
    public record Drawn(String svg, int width, int height) {}

    public SvgDrawer() {
        try (Context context = entered()) {
            scope = context.initSafeStandardObjects();
            ScriptableObject colors = (ScriptableObject) context.newObject(scope);
            Ink.all().forEach((name, value) -> ScriptableObject.putProperty(colors, name, value));
            ScriptableObject.putProperty(scope, "inks", colors);
            LambdaFunction width = new LambdaFunction(
                    scope, "textWidth", 1, (c, s, self, given) -> Typefaces.width(Context.toString(given[0])));
            ScriptableObject.putProperty(scope, "textWidth", width);
            run(context, PAPER);
            run(context, LIBRARY);
            run(context, LOOK);
            run(context, TRANSLATION);
            draw = (Function) ScriptableObject.getProperty(scope, "drawFigure");
        }
    }

    /** One figure, so wide. */
    public synchronized Drawn draw(Figure figure, int width) {
        try (Context context = entered()) {
            Object[] arguments = {FigureJson.write(figure), width};
            ScriptableObject drawn = (ScriptableObject) draw.call(context, scope, scope, arguments);
            String svg = Context.toString(ScriptableObject.getProperty(drawn, "svg"));
            double height = Context.toNumber(ScriptableObject.getProperty(drawn, "height"));
            return new Drawn(forPrint(svg), width, (int) Math.round(height));
        }
    }

    /** The library is too large to be compiled as a whole; interpreted it is fast enough. */
    private static Context entered() {
        Context context = Context.enter();
        context.setInterpretedMode(true);
        context.setLanguageVersion(Context.VERSION_ES6);
        return context;
    }

    private void run(Context context, String resource) {
        try (InputStream in = SvgDrawer.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing from this build");
            }
            String script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            context.evaluateString(scope, script, resource, 1, null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final Pattern TEXT = Pattern.compile("<text ([^>]*)>");
    private static final Pattern SIZE = Pattern.compile("font(?:-size)?:([0-9.]+)px");
    private static final Pattern HALO =
            Pattern.compile(" (stroke|stroke-width|paint-order|stroke-miterlimit)=\"[^\"]*\"");

    /**
     * The printing library knows neither text set by its middle nor a halo below the letters, and makes text of 12 pixels
     * one pixel high.
     */
    private static String forPrint(String svg) {
        return TEXT.matcher(svg).replaceAll(found -> Matcher.quoteReplacement(text(found.group(1))));
    }

    private static String text(String attributes) {
        Matcher size = SIZE.matcher(attributes);
        double pixels = size.find() ? Double.parseDouble(size.group(1)) : 12;
        String middle = String.format(java.util.Locale.ROOT, "dy=\"%.2f\"", 0.35 * pixels);
        return "<text "
                + HALO.matcher(attributes)
                        .replaceAll("")
                        .replace("dominant-baseline=\"central\"", middle)
                        .replaceAll("\\b12px", "12.01px")
                + ">";
    }
}
