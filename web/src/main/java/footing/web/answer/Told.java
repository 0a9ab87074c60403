package footing.web.answer;

import footing.core.answer.Answer;

/**
 * The best answer known by now.
 *
 * @param stage counts up with every better answer to the same text
 * @param whole true once nothing is left out
 * @param working true while a better one is being worked out
 * @param share of the work done, 0 to 1
 */
public record Told(Answer answer, int stage, boolean whole, boolean working, double share) {}
