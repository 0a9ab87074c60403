/** Tests of forecasts held against what came: bands that hold what they say, standings, warranties. */
@org.jspecify.annotations.NullMarked
package footing.core.follow;
