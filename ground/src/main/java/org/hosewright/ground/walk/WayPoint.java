package org.hosewright.ground.walk;

import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;

/** A point of the way that was walked.
 *
 * @param position where
 * @param along distance from the start along the way
 * @param height above the start, negative below it
 * @param fix index of the fix in the track that stands here, or of the last one before
 */
public record WayPoint(Position position, Known<Length> along, Length height, int fix) {}
