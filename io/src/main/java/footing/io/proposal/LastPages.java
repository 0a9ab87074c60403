package footing.io.proposal;

import footing.core.answer.Answer;

/** What follows the machines: what all of them assume, the order sheet, the after-list. */
final class LastPages {
    private final Answer answer;
    private final Pages pages;

    LastPages(Answer answer, Pages pages) {
        this.answer = answer;
        this.pages = pages;
    }

    void write() {
        pages.out().open("div", "class", "fresh");
        pages.heading("h2", "What every answer here assumes");
        pages.bare(Assumptions.shared(answer));
        pages.out().close();
    }
}
