package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.files.lay.LayDocument;
import org.hosewright.files.lay.LayFile;
import org.hosewright.files.lay.WhatIfText;
import org.hosewright.hydraulics.profile.Sheet;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.LayWhatIf;

/** Lays in the open format: read into their entries, and solved with the kit in force. Nothing is kept. */
final class LayRoutes {
    private static final String SOURCE = "lay.yaml";

    private final CurrentKit kit;
    private final Clock clock;

    LayRoutes(CurrentKit kit, Clock clock) {
        this.kit = kit;
        this.clock = clock;
    }

    List<Route> list() {
        return List.of(Route.ask("/lays/read", LayRoutes::read), Route.ask("/lays/solve", this::solve));
    }

    private static void read(Context answer) {
        Asked asked = Asked.of(answer, Set.of("text", "source"));
        String source = asked.findText("source").orElse(SOURCE);
        ObjectNode json = Answer.object();
        json.set("lay", Answer.tree(LayFile.plain(asked.text("text"), source)));
        Answer.json(answer, json);
    }

    private void solve(Context answer) {
        Asked asked = Asked.of(answer, Set.of("text", "tip", "sheet", "whatIf"));
        Kit now = kit.get().document().kit();
        LayDocument lay = LayFile.read(asked.text("text"), now, SOURCE);
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.of(now.zone()));
        LayReport report = LayReport.of(now, LayFile.laid(lay, now, SOURCE), Optional.of(today));
        Sheet sheet = Queried.sheet(asked.findText("sheet").orElse("laptop"));
        ObjectNode json = new LayShown(report, LayFile.names(lay)).json(asked.findText("tip"), sheet);
        asked.findText("whatIf")
                .map(change -> LayWhatIf.of(report, WhatIfText.parse(change), Optional.of(today)))
                .ifPresent(found -> json.set("whatIf", new WhatIfShown(found, now.units()).json()));
        Answer.json(answer, json);
    }
}
