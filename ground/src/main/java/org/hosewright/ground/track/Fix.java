package org.hosewright.ground.track;

import java.time.Instant;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** One position as a receiver gave it.
 *
 * @param position where
 * @param time when; absent where the file does not say
 * @param accuracy radius within which the true position lies two times in three, as the receiver judged; above 0
 * @param elevation height above sea level, where known
 */
public record Fix(Position position, Optional<Instant> time, Optional<Length> accuracy, Optional<Length> elevation) {
    public Fix {
        accuracy.ifPresent(radius -> Numbers.requirePositive("accuracy of a position", radius.metres()));
    }

    public static Fix of(Position position) {
        return new Fix(position, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public Fix withElevation(Optional<Length> elevation) {
        return new Fix(position, time, accuracy, elevation);
    }
}
