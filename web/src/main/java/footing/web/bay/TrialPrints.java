package footing.web.bay;

import footing.core.ground.TakenPrint;
import java.util.List;

/** Where the prints come from that were taken in a case's trials. */
@FunctionalInterface
public interface TrialPrints {
    /** Of a case by its id. */
    List<TakenPrint> of(String caseId);
}
