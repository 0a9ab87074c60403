package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.io.trial.TrialQuote;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

class TriedViewTest {
    private static final TrialQuote PULL = new TrialQuote(
            "Pull <12 runs, 2027-02-06>",
            "Airless is better.",
            List.of("Lane 3 was driven twice."),
            List.of("Nobody in line."));
    private static final TrialQuote RIDE = new TrialQuote(
            "Ride (10 runs, 2027-02-06)", "Alike.", List.of(), List.of("Nobody in line.", "No exposure."));

    private static String page(TriedView tried) {
        ClassLoaderTemplateResolver templates = new ClassLoaderTemplateResolver();
        templates.setPrefix("templates/");
        templates.setSuffix(".html");
        templates.setCharacterEncoding("UTF-8");
        SpringTemplateEngine engine = new SpringTemplateEngine();
        engine.setTemplateResolver(templates);
        Context context = new Context(Locale.ROOT);
        context.setVariable("tried", tried);
        return engine.process("answer/parts", Set.of("tried"), context);
    }

    @Test
    void page_verdictsOfTrials_standWithDoubtsLimitsAndWhatTheyAreNot() {
        String page = page(TriedView.of(List.of(PULL, RIDE)));

        assertThat(page)
                .containsSubsequence(
                        "No money on this page rests on it",
                        "Pull &lt;12 runs, 2027-02-06&gt;: Airless is better.",
                        "A skeptic would say: Lane 3 was driven twice.",
                        "Ride (10 runs, 2027-02-06): Alike.",
                        "class=\"caution\">Nobody in line.",
                        "class=\"caution\">No exposure.");
        assertThat(page.split("Nobody in line", -1)).hasSize(2);
    }

    @Test
    void of_noTrials_isEmpty() {
        assertThat(TriedView.of(List.of()).lines()).isEmpty();
    }
}
