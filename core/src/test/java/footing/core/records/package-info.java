/** Tests of what records teach: reference values from data files, simulated fleets, and what must be refused. */
@org.jspecify.annotations.NullMarked
package footing.core.records;
