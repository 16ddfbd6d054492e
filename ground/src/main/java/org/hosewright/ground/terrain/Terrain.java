package org.hosewright.ground.terrain;

import java.util.Optional;
import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.quantity.Length;

/** Heights of the ground. */
public interface Terrain {

    /** Height above sea level, where known: not beyond the file's edge and not at a void. */
    Optional<Length> findHeight(Position position);

    /** Where the heights come from, to be shown with them: "terrain file N44W073.hgt". */
    String source();
}
