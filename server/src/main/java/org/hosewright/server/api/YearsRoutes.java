package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.years.NightFlown;
import org.hosewright.ledger.years.YearsAnalysis;

/** What all test nights together say; each state of the nights with each kit is worked out once. */
final class YearsRoutes {
    private static final int KEPT = 2;

    private final Drills drills;
    private final CurrentKit kit;
    private final Cache<State, String> known =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    YearsRoutes(Drills drills, CurrentKit kit) {
        this.drills = drills;
        this.kit = kit;
    }

    List<Route> list() {
        return List.of(Route.get("/years", this::years));
    }

    /** What a result hangs on.
     *
     * @param kitVersion version of the kit
     * @param nights id and version of each night
     */
    private record State(long kitVersion, List<String> nights) {}

    private void years(Context answer) {
        CurrentKit.Read now = kit.get();
        List<DrillRecord> nights = drills.listDrills().stream()
                .map(DrillSummary::id)
                .map(drills::findDrill)
                .flatMap(Optional::stream)
                .toList();
        State state = new State(
                now.version(),
                nights.stream().map(night -> night.id() + " " + night.version()).toList());
        String json = known.get(state, any -> work(now.document().kit(), nights));
        answer.contentType("application/json; charset=utf-8").result(json);
    }

    private static String work(Kit kit, List<DrillRecord> nights) {
        return ResultJson.years(YearsAnalysis.of(
                kit, nights.stream().map(night -> flown(night, kit)).toList()));
    }

    private static NightFlown flown(DrillRecord drill, Kit kit) {
        StandingNight standing = StandingNight.of(drill, kit);
        return new NightFlown(drill.id(), drill.name(), drill.date(), standing.readings(), standing.rulings());
    }
}
