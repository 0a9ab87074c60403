package footing.web.bay;

import footing.core.ground.TakenPrint;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriComponentsBuilder;
import tools.jackson.databind.json.JsonMapper;

/** The two pages of the bay: {@code fit} with the set-up, and {@code ground}. */
@Component
class BayPages {
    static final String GROUND = "ground";

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final ObjectProvider<TrialPrints> prints;

    BayPages(ObjectProvider<TrialPrints> prints) {
        this.prints = prints;
    }

    ModelAndView page(Bench bench, String page) {
        return new ModelAndView("bay/page", model(bench, page, ""));
    }

    /** What is swapped in after a change. */
    ModelAndView region(Bench bench, String page, String notice) {
        return new ModelAndView("bay/parts :: region", model(bench, page, notice));
    }

    private Map<String, Object> model(Bench bench, String page, String notice) {
        MeasurePanel panel = MeasurePanel.of(bench);
        boolean ground = page.equals(GROUND);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", bench.kept());
        model.put("machine", bench.machine().id());
        model.put("kind", bench.machine().kind());
        model.put("wheels", bench.wheels().id());
        model.put("packages", bench.packages());
        model.put("panel", panel);
        model.put("address", address(bench));
        model.put("notice", notice);
        Map<String, String> vals = new LinkedHashMap<>();
        vals.put("wheels", bench.wheels().id());
        vals.put("page", page);
        vals.put("version", Long.toString(bench.kept().version()));
        model.put("vals", JSON.writeValueAsString(vals));
        model.put("fit", ground ? null : FitView.of(bench, panel));
        model.put("ground", ground ? GroundView.of(bench, panel, taken(bench)) : null);
        return model;
    }

    private List<TakenPrint> taken(Bench bench) {
        return prints.orderedStream()
                .flatMap(p -> p.of(bench.kept().id()).stream())
                .toList();
    }

    /** Where a changed box is sent. */
    static String address(Bench bench) {
        return UriComponentsBuilder.fromPath("/cases/{id}/machines/{m}/measures")
                .encode()
                .buildAndExpand(bench.kept().id(), bench.machine().id())
                .toUriString();
    }
}
