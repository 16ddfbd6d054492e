package org.hosewright.ground.walk;

import java.util.List;
import java.util.Optional;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;

/** What is asked about a track.
 *
 * @param track as recorded
 * @param section from coupling to coupling; from 1 m to 200 m
 * @param measured lengths of the way that were measured
 * @param byHand rise entered by hand, where one was
 * @param terrain heights of the ground, where there is a file
 */
public record WalkQuestion(
        Track track,
        Length section,
        List<MeasuredLength> measured,
        Optional<EnteredRise> byHand,
        Optional<Terrain> terrain) {
    private static final double SHORTEST_m = 1;
    private static final double LONGEST_m = 200;

    public WalkQuestion {
        measured = List.copyOf(measured);
        if (!(section.metres() >= SHORTEST_m && section.metres() <= LONGEST_m)) {
            throw new InvalidInput(
                    "section", section.metres() + " m", "a section from 1 m to 200 m (3 ft to 650 ft)", "");
        }
        for (MeasuredLength length : measured) {
            if (length.at() >= track.fixes().size()) {
                throw new InvalidInput(
                        "end of a measured length", String.valueOf(length.at()), "the index of a position", "");
            }
        }
    }

    public static WalkQuestion of(Track track, Length section) {
        return new WalkQuestion(track, section, List.of(), Optional.empty(), Optional.empty());
    }

    public WalkQuestion withTerrain(Terrain heights) {
        return new WalkQuestion(track, section, measured, byHand, Optional.of(heights));
    }

    public WalkQuestion withRise(EnteredRise rise) {
        return new WalkQuestion(track, section, measured, Optional.of(rise), terrain);
    }

    public WalkQuestion withMeasured(List<MeasuredLength> lengths) {
        return new WalkQuestion(track, section, lengths, byHand, terrain);
    }
}
