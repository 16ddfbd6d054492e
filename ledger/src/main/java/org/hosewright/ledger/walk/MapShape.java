package org.hosewright.ledger.walk;

import java.util.List;
import org.hosewright.ground.track.Position;

/** One thing on the company's own map.
 *
 * @param kind what it is drawn as
 * @param places its outline, its course, or the one place where it is; not empty
 */
public record MapShape(Kind kind, List<Position> places) {
    /** What a shape is drawn as. */
    public enum Kind {
        /** A building or another area, by its outline. */
        AREA,
        /** A lane or another course. */
        LINE,
        /** A hydrant or another place. */
        POINT
    }

    public MapShape {
        places = List.copyOf(places);
    }
}
