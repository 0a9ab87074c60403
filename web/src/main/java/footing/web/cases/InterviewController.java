package footing.web.cases;

import footing.io.interview.Interview;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.servlet.ModelAndView;

/** A new case by the eight questions, on one page. What is left open is guessed, and each guess is shown beside it. */
@Controller
class InterviewController {
    private final CaseStore store;

    InterviewController(CaseStore store) {
        this.store = store;
    }

    @GetMapping("/cases/new")
    ModelAndView ask() {
        return shown(Map.of(), Map.of(), HttpStatus.OK);
    }

    @PostMapping("/cases/new")
    ModelAndView make(@RequestParam Map<String, String> form) {
        Map<String, String> answers = answers(form);
        Map<String, String> faults = Interview.faults(answers);
        if (!faults.isEmpty()) {
            return shown(answers, faults, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        String text = Interview.caseText(answers, LocalDate.now(ZoneId.systemDefault()));
        String title = Desk.of(text).stated().orElseThrow().heading().title();
        StoredCase made = store.create(title, text, "Made by the eight questions");
        return new ModelAndView("redirect:/cases/" + made.id());
    }

    /** What the answers so far leave to guesses, and what is wrong with them: for the page, while one types. */
    @PostMapping("/cases/new/look")
    @ResponseBody
    Map<String, FieldLook> look(@RequestParam Map<String, String> form) {
        Map<String, String> answers = answers(form);
        Map<String, String> faults = Interview.faults(answers);
        Map<String, FieldLook> looks = new LinkedHashMap<>();
        Interview.fields().forEach((id, field) -> looks.put(id, FieldLook.of(field, answers, faults)));
        return looks;
    }

    private static ModelAndView shown(Map<String, String> answers, Map<String, String> faults, HttpStatus status) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("questions", QuestionView.all(answers, faults));
        model.put("faulty", QuestionView.faulty(faults));
        return new ModelAndView("cases/new", model, status);
    }

    private static Map<String, String> answers(Map<String, String> form) {
        Map<String, String> answers = new LinkedHashMap<>(form);
        answers.keySet().retainAll(Interview.fields().keySet());
        return answers;
    }
}
