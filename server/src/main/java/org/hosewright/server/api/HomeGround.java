package org.hosewright.server.api;

import java.util.List;
import org.hosewright.files.track.MapLayer;
import org.hosewright.ground.track.Earth;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;

/** Where the company's own map lies: a track far off it that lies there with latitude and longitude changed over was
 * written the wrong way round. */
final class HomeGround {
    /** Nobody lays hose so far from the own map [m]. */
    private static final double FAR_m = 1_000_000;

    /** So near the own map lies what a company walks [m]. */
    private static final double NEAR_m = 300_000;

    private HomeGround() {}

    /** Refuses a track that looks swapped; without a map nothing can be told. */
    static void check(Leaves leaves, Track track) {
        List<Position> homes = leaves.listWhole(LeafKind.LAYER).stream()
                .flatMap(leaf -> MapLayer.read(leaf.text()).findPlace().stream())
                .toList();
        Position first = track.first().position();
        if (Math.abs(first.longitude_deg()) > 90 || homes.stream().anyMatch(home -> away_m(home, first) < FAR_m)) {
            return;
        }
        Position turned = new Position(first.longitude_deg(), first.latitude_deg());
        if (homes.stream().anyMatch(home -> away_m(home, turned) < NEAR_m)) {
            throw new InvalidInput(
                    "position",
                    "latitude " + first.latitude_deg() + ", longitude " + first.longitude_deg(),
                    "a place within 1000 km of the company's own map; latitude and longitude look swapped",
                    "track, position 1");
        }
    }

    private static double away_m(Position one, Position other) {
        return Earth.distance(one, other).metres();
    }
}
