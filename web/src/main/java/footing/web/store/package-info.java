/**
 * The cases kept, and every state they have been in. It may see core and io and knows nothing of pages. The case
 * document is the truth; the tables serve to find it. Store: SQLite in the data folder, with the migrations in
 * db/migration.
 */
@NullMarked
package footing.web.store;

import org.jspecify.annotations.NullMarked;
