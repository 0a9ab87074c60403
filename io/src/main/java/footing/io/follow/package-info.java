/**
 * Forecasts kept beside a case, and what came of them told.
 *
 * <p>Sees {@code core}, and of io {@code form}, {@code answer}, {@code records} and {@code words}; its figures come from
 * {@code core.follow}. The format {@code footing-forecast/1} is Footing's own and stands with {@code ForecastFile}.
 */
@NullMarked
package footing.io.follow;

import org.jspecify.annotations.NullMarked;
