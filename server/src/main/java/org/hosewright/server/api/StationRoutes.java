package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;

/** Whether every line is ready, and what each one wants. */
final class StationRoutes {
    private final CurrentKit kit;
    private final Drills drills;
    private final OrderDesk desk;
    private final Clock clock;

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
        Kit now = kit.get().document().kit();
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.of(now.zone()));
        ObjectNode json = Answer.object();
        ArrayNode lines = json.putArray("lines");
        for (HosePackage named : now.packages().values()) {
            lines.add(new Readiness(now, named, today).json());
        }
        json.set("orders", new OrderReadiness(desk).json(now));
        ArrayNode nights = json.putArray("nights");
        drills.listDrills().forEach(drill -> nights.add(RecordJson.summary(drill)));
        Answer.json(answer, json);
    }
}
