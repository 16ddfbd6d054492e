package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillReport;

/** Where test nights are worked out, each state of a night with each kit once. */
final class NightDesk {
    private static final int KEPT = 32;

    private final CurrentKit kit;
    private final Cache<State, StandingNight> nights =
            Caffeine.newBuilder().maximumSize(KEPT).build();
    private final Cache<State, DrillReport> reports =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    NightDesk(CurrentKit kit) {
        this.kit = kit;
    }

    /** What a report hangs on. */
    private record State(String drill, long version, long kitVersion) {
        static State of(DrillRecord drill, CurrentKit.Read kit) {
            return new State(drill.id(), drill.version(), kit.version());
        }
    }

    /** The rows of a night that can be analysed with the kit as it stands. */
    StandingNight standing(DrillRecord drill) {
        CurrentKit.Read now = kit.get();
        return nights.get(
                State.of(drill, now),
                state -> StandingNight.of(drill, now.document().kit()));
    }

    /** What the readable rows of a night say.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput no row can be read
     */
    DrillReport report(DrillRecord drill) {
        CurrentKit.Read now = kit.get();
        return reports.get(State.of(drill, now), state -> of(drill, now, standing(drill)));
    }

    /** What a whole night says.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput a row of it cannot be read
     */
    DrillReport whole(DrillRecord drill) {
        standing(drill).whole();
        return report(drill);
    }

    private static DrillReport of(DrillRecord drill, CurrentKit.Read kit, StandingNight night) {
        return DrillAnalysis.of(
                DrillRoutes.fileName(drill),
                Optional.of(drill.date()),
                kit.document().kit(),
                night.readings(),
                night.rulings());
    }
}
