package footing.cli.text;

import footing.core.follow.FollowUp;
import footing.core.follow.Warranty;
import footing.io.words.FollowWords;
import footing.io.words.Lists;
import java.util.List;

/** A forecast against what came, on a terminal. */
public final class FollowText {
    private FollowText() {}

    public static String of(FollowUp up, List<Warranty> warranties, Letters letters) {
        Lines lines = new Lines(letters);
        String currency = up.forecast().currency();
        lines.paragraph(FollowWords.summary(up));
        lines.paragraph(FollowWords.intro(up.forecast()));
        for (FollowUp.Machine m : up.machines()) {
            lines.head(FollowWords.head(m));
            m.lines().forEach(l -> lines.item(FollowWords.line(l, currency)));
        }
        if (!up.silent().isEmpty()) {
            lines.head("Nothing written down since");
            lines.item(Lists.and(up.silent()));
        }
        up.fleet().ifPresent(f -> {
            lines.head("All machines");
            f.lines().forEach(l -> lines.item(FollowWords.line(l, currency)));
        });
        if (!warranties.isEmpty()) {
            lines.head("Warranties");
            warranties.forEach(w -> lines.item(FollowWords.warranty(w, currency)));
            lines.paragraph(FollowWords.WARRANTY_ASKS);
        }
        return lines.toString();
    }
}
