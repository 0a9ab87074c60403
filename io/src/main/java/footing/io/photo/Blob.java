package footing.io.photo;

import boofcv.struct.image.GrayU8;

/**
 * A dark patch on a canvas.
 *
 * @param mask 1 where it is, in the canvas's pixels
 * @param area in pixels
 * @param worth how much it looks like a print
 * @param second area of the next largest patch at the same level
 */
record Blob(GrayU8 mask, double area, double worth, double second) {}
