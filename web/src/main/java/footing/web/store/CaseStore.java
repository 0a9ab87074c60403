package footing.web.store;

import java.util.List;

/**
 * Keeps cases. Whatever a call here returns is on the disk. Every call that changes a case names the version it was
 * made from, so that of two people changing at once the second is told and nothing is lost.
 */
public interface CaseStore {
    /** Archived ones too; last changed first. */
    List<CaseSummary> list();

    /**
     * The case as it stands.
     *
     * @throws NoSuchCase if there is none
     */
    StoredCase get(String id);

    /**
     * Keeps a new case.
     *
     * @param what the first entry of its history, such as 'made by the eight questions'
     */
    StoredCase create(String name, String text, String what);

    /**
     * Keeps a new state of the document.
     *
     * @param what what was changed, in words: 'Slack in a day: 0.5 h to 1 h'
     * @throws Overtaken if the case has changed since {@code expectedVersion}
     */
    StoredCase save(String id, String text, String what, long expectedVersion);

    StoredCase rename(String id, String name, long expectedVersion);

    /** Goes back by one change, which is itself a change; without effect if there is none to undo. */
    StoredCase undo(String id, long expectedVersion);

    /** Takes the last undo back. */
    StoredCase redo(String id, long expectedVersion);

    /** Puts the document of an earlier version in force again, which is itself a change. */
    StoredCase goBackTo(String id, long version, long expectedVersion);

    /** A new case with the document, what is kept beside it, and a history of its own. */
    StoredCase copy(String id, String name);

    StoredCase archive(String id, long expectedVersion);

    StoredCase restore(String id, long expectedVersion);

    /** Forgets a case and its history; only an archived one. */
    void deleteForGood(String id, long expectedVersion);

    /** Latest first. */
    List<Change> history(String id);
}
