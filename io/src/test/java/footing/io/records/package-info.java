/** Tests of reading records: what a shop's sheets look like, broken ones, large ones, and the demo's log. */
@org.jspecify.annotations.NullMarked
package footing.io.records;
