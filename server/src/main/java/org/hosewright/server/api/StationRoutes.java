package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.ready.RigReady;

/** Whether every line is ready, and what each one wants. */
final class StationRoutes {
    private static final int MORNINGS_KEPT = 2;

    private final CurrentKit kit;
    private final Drills drills;
    private final OrderDesk desk;
    private final StretchWatch stretches;
    private final PracticeDesk practice;
    private final Cache<Morning, ArrayNode> lines =
            Caffeine.newBuilder().maximumSize(MORNINGS_KEPT).build();

    private final Cache<Seen, String> looks =
            Caffeine.newBuilder().maximumSize(MORNINGS_KEPT).build();

    private final Cache<Morning, Map<String, RigReady>> rigs =
            Caffeine.newBuilder().maximumSize(MORNINGS_KEPT).build();

    /** What the lines' readiness hangs on: the kit and the day. */
    private record Morning(long kitVersion, LocalDate day) {}

    StationRoutes(CurrentKit kit, Drills drills, OrderDesk desk, StretchWatch stretches, PracticeDesk practice) {
        this.kit = kit;
        this.drills = drills;
        this.desk = desk;
        this.stretches = stretches;
        this.practice = practice;
    }

    List<Route> list() {
        return List.of(Route.get("/station", this::station));
    }

    /** What the whole morning's look hangs on. */
    private record Seen(
            OrderDesk.Standing standing, List<Long> stretches, List<Long> practice, List<DrillSummary> nights) {}

    private void station(Context answer) {
        var seen = new Seen(desk.standing(), stretches.seen(), practice.seen(), drills.listDrills());
        Answer.json(answer, Objects.requireNonNull(looks.get(seen, this::look)));
    }

    private String look(Seen seen) {
        CurrentKit.Read read = kit.get();
        Kit now = read.document().kit();
        LocalDate today = desk.today(now);
        ObjectNode json = Answer.object();
        var morning = new Morning(read.version(), today);
        json.set("lines", lines.get(morning, same -> lines(now, today)));
        json.set("orders", new OrderReadiness(desk, rigs.get(morning, same -> rigs(now, today))).json(now));
        json.set("stretches", stretches.json());
        json.set("practice", practice.json());
        ArrayNode nights = json.putArray("nights");
        seen.nights().forEach(drill -> nights.add(RecordJson.summary(drill)));
        return json.toString();
    }

    private static Map<String, RigReady> rigs(Kit kit, LocalDate today) {
        Map<String, RigReady> rigs = new LinkedHashMap<>();
        kit.engines().keySet().forEach(engine -> rigs.put(engine, RigReady.of(kit, engine, today)));
        return rigs;
    }

    private static ArrayNode lines(Kit kit, LocalDate today) {
        ArrayNode lines = Answer.array();
        kit.packages().values().forEach(named -> lines.add(new Readiness(kit, named, today).json()));
        return lines;
    }
}
