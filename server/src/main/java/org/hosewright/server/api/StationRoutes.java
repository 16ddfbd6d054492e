package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.kit.Kit;

/** Whether every line is ready, and what each one wants. */
final class StationRoutes {
    private static final int MORNINGS_KEPT = 2;

    private final CurrentKit kit;
    private final Drills drills;
    private final OrderDesk desk;
    private final Clock clock;
    private final Cache<Morning, ArrayNode> lines =
            Caffeine.newBuilder().maximumSize(MORNINGS_KEPT).build();

    /** What the lines' readiness hangs on: the kit and the day. */
    private record Morning(long kitVersion, LocalDate day) {}

    StationRoutes(CurrentKit kit, Drills drills, OrderDesk desk, Clock clock) {
        this.kit = kit;
        this.drills = drills;
        this.desk = desk;
        this.clock = clock;
    }

    List<Route> list() {
        return List.of(Route.get("/station", this::station));
    }

    private void station(Context answer) {
        CurrentKit.Read read = kit.get();
        Kit now = read.document().kit();
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.of(now.zone()));
        ObjectNode json = Answer.object();
        json.set("lines", lines.get(new Morning(read.version(), today), morning -> lines(now, today)));
        json.set("orders", new OrderReadiness(desk).json(now));
        ArrayNode nights = json.putArray("nights");
        drills.listDrills().forEach(drill -> nights.add(RecordJson.summary(drill)));
        Answer.json(answer, json);
    }

    private static ArrayNode lines(Kit kit, LocalDate today) {
        ArrayNode lines = Answer.array();
        kit.packages().values().forEach(named -> lines.add(new Readiness(kit, named, today).json()));
        return lines;
    }
}
