package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.fleet.Case;
import footing.io.casefile.Reading;
import footing.web.store.StoredCase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;
import tools.jackson.databind.json.JsonMapper;

/** Puts together what the templates of an answer need. */
@Component
class CaseModel {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Answers answers;
    private final ObjectProvider<TrialVerdicts> trials;
    private final Narrowings narrowings;

    CaseModel(Answers answers, ObjectProvider<TrialVerdicts> trials, Narrowings narrowings) {
        this.answers = answers;
        this.trials = trials;
        this.narrowings = narrowings;
    }

    /** A case as it is read. */
    static Reading read(StoredCase kept) {
        return kept.read();
    }

    /** The machine a page is about: the one asked for, or the only one; null for all of several. */
    static @Nullable String machine(Case stated, @Nullable String asked) {
        List<Case.Machine> machines = stated.machines();
        if (asked != null && machines.stream().anyMatch(m -> m.id().equals(asked))) {
            return asked;
        }
        return machines.size() == 1 ? machines.get(0).id() : null;
    }

    /**
     * Everything about a case.
     *
     * @param asked the machine asked for; null or unknown for all of them
     */
    Map<String, Object> of(StoredCase kept, Case stated, @Nullable String asked) {
        String machine = machine(stated, asked);
        Told told = answers.now(kept.id(), stated, machine);
        Answer answer = machine == null ? told.answer() : Only.of(told.answer(), machine);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("told", told);
        model.put("machine", machine);
        model.put("machines", stated.machines().stream().map(Case.Machine::id).toList());
        model.put("top", TopView.of(answer, read(kept).warnings()));
        model.put("narrowed", narrowings.told(answer));
        model.put("futures", footing.io.words.Figures.money(told.answer().futures()));
        model.put("percent", Math.round(100 * told.share()));
        model.put("panel", Panel.of(answer));
        model.put("sharpen", SharpenView.of(stated, machine));
        model.put("fleet", machine == null ? FleetView.of(answer) : null);
        model.put("one", machine == null ? null : MachineView.of(answer));
        model.put("tried", tried(kept));
        model.put("notice", "");
        model.put("vals", JSON.writeValueAsString(vals(kept, machine)));
        model.put("poll", poll(kept, told.stage()));
        return model;
    }

    private TriedView tried(StoredCase kept) {
        return TriedView.of(
                trials.orderedStream().flatMap(t -> t.of(kept.id()).stream()).toList());
    }

    /** What every request from the page says of itself. */
    private static Map<String, String> vals(StoredCase kept, @Nullable String machine) {
        Map<String, String> vals = new LinkedHashMap<>();
        vals.put("machine", machine == null ? "" : machine);
        vals.put("version", Long.toString(kept.version()));
        return vals;
    }

    private static String poll(StoredCase kept, int stage) {
        return UriComponentsBuilder.fromPath("/cases/{id}/answer")
                .queryParam("stage", stage)
                .encode()
                .buildAndExpand(kept.id())
                .toUriString();
    }
}
