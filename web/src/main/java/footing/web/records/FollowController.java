package footing.web.records;

import footing.core.answer.Answer;
import footing.core.fleet.Case;
import footing.core.follow.Forecast;
import footing.core.follow.Forecaster;
import footing.core.records.Log;
import footing.web.answer.Answers;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** Whether it came true: a forecast kept, and what was written down since held against it. */
@Controller
@RequestMapping("/cases/{id}/follow")
class FollowController {
    private static final String UNREADABLE =
            "This case file can’t be read, so nothing can be forecast; look at it under ‘Case file’.";

    private final CaseStore cases;
    private final ForecastStore forecasts;
    private final Learning learning;
    private final Answers answers;
    private final Object oneAtATime = new Object();

    FollowController(CaseStore cases, ForecastStore forecasts, Learning learning, Answers answers) {
        this.cases = cases;
        this.forecasts = forecasts;
        this.learning = learning;
        this.answers = answers;
    }

    /**
     * The page.
     *
     * @param of what is drawn, as the forecast's file names it
     * @param forecast which one; left out, the last kept
     * @param machine the only one to show; left out, all of them
     * @param kept true if one was just kept
     */
    @GetMapping
    ModelAndView page(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String of,
            @RequestParam(defaultValue = "") String forecast,
            @RequestParam(defaultValue = "") String machine,
            @RequestParam(defaultValue = "false") boolean kept) {
        StoredCase stored = cases.get(id);
        String done = kept ? "The forecast is kept, with today’s date." : "";
        return shown(stored, new FollowChoice(of, forecast, machine), done, "", HttpStatus.OK);
    }

    private ModelAndView shown(StoredCase kept, FollowChoice choice, String done, String fault, HttpStatus status) {
        List<ForecastStore.Heading> all = forecasts.kept(kept.id());
        Optional<ForecastStore.Heading> chosen = choice.of(all);
        if (chosen.isEmpty() && !choice.forecast().isEmpty()) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        }
        Optional<Forecast> forecast = chosen.flatMap(h -> forecasts.forecast(kept.id(), h.id()));
        Log log = learning.book(kept.id()).ledger().log();
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("view", FollowView.of(forecast, log, choice));
        model.put("warranties", WarrantyView.of(kept.read().found(), log, today()));
        model.put("forecasts", all);
        model.put("chosen", chosen.map(ForecastStore.Heading::id).orElse(0L));
        model.put("choice", choice);
        model.put("done", done);
        model.put("fault", fault);
        return new ModelAndView("records/follow", model, status);
    }

    /** Forecasts by what the answer advises as far as it is known by now. */
    @PostMapping("/keep")
    ModelAndView keep(@PathVariable String id) {
        StoredCase kept = cases.get(id);
        Optional<Case> stated = kept.read().found();
        if (stated.isEmpty() || stated.get().machines().isEmpty()) {
            return shown(kept, FollowChoice.USUAL, "", UNREADABLE, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        synchronized (oneAtATime) {
            Answer answer = answers.now(id, stated.get(), null).answer();
            forecasts.keep(id, Forecaster.of(answer, Map.of(), today()));
        }
        return new ModelAndView("redirect:/cases/" + id + "/follow?kept=true");
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }
}
