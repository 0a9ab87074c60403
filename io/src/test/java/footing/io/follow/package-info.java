/** Tests of forecasts kept in files and told in words. */
@org.jspecify.annotations.NullMarked
package footing.io.follow;
