package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.profile.Sheet;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.picture.ReachPicture;
import org.hosewright.ledger.reach.PackageReach;
import org.hosewright.ledger.reach.ReachAnalysis;
import org.hosewright.ledger.reach.ReachReport;

/** How far each package goes, at a rise and a ceiling. */
final class ReachRoutes {
    private final CurrentKit kit;
    private final Clock clock;

    ReachRoutes(CurrentKit kit, Clock clock) {
        this.kit = kit;
        this.clock = clock;
    }

    List<Route> list() {
        return List.of(Route.get("/reach", this::reach));
    }

    private void reach(Context answer) {
        Kit whole = kit.get().document().kit();
        Kit now = Queried.find(answer, "engine").map(whole::ofEngine).orElse(whole);
        Length rise = Queried.find(answer, "rise").map(QuantityText::length).orElse(new Length(0));
        Optional<Pressure> ceiling = Queried.find(answer, "ceiling").map(QuantityText::pressure);
        Optional<LocalDate> today = Optional.of(LocalDate.ofInstant(clock.instant(), ZoneId.of(now.zone())));
        ReachReport report = ReachAnalysis.of(now, new ReachAnalysis.Question(rise, ceiling, today));
        QuantityShown shown = QuantityShown.of(now.units());
        ObjectNode json = Answer.object().put("rise", shown.rise(rise));
        ceiling.ifPresent(pressure -> json.put("ceiling", shown.text(pressure)));
        ArrayNode packages = json.putArray("packages");
        report.packages().forEach(reach -> packages.add(one(report, reach, Queried.sheet(answer))));
        report.assumed().forEach(json.putArray("assumed")::add);
        Answer.json(answer, json);
    }

    private static ObjectNode one(ReachReport report, PackageReach reach, Sheet sheet) {
        QuantityShown shown = QuantityShown.of(report.kit().units());
        ObjectNode json = Answer.object().put("id", reach.hosePackage().id());
        json.put("line", PackageWords.of(report.kit(), reach.hosePackage()));
        json.put("safe", shown.text(reach.result().longestSafe()));
        json.put("longest", shown.text(reach.result().longest()))
                .put("sections", reach.result().sections());
        json.put("stoppedBy", reach.result().stoppedBy());
        json.put("measured", PackageWords.measured(report.kit(), reach.hosePackage()));
        json.set("drawing", DrawingJson.of(ReachPicture.of(report, reach).draw(sheet)));
        json.set("workings", DrillShown.workings(reach.workings()));
        reach.cautions().forEach(json.putArray("cautions")::add);
        return json;
    }
}
