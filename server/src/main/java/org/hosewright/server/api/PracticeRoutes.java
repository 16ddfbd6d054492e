package org.hosewright.server.api;

import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.server.setup.ServerConfig;

/** Practice sheets for drivers: made from the order in force, printed with their answers, taken out. */
final class PracticeRoutes {
    private static final int MOST_PROBLEMS = 40;

    private final Leaves leaves;
    private final PracticeDesk desk;
    private final ServerConfig config;

    PracticeRoutes(Leaves leaves, PracticeDesk desk, ServerConfig config) {
        this.leaves = leaves;
        this.desk = desk;
        this.config = config;
    }

    List<Route> list() {
        return List.of(
                Route.get("/practice", answer -> Answer.json(answer, desk.json())),
                Route.post("/practice", LeafKind.PRACTICE.hat(), this::make),
                Route.get("/practice/{sheet}/sheet.pdf", this::print),
                Route.post("/practice/{sheet}/taken-out", LeafKind.PRACTICE.hat(), this::takeOut));
    }

    private void make(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "engine", "problems"));
        long problems = asked.number("problems");
        if (problems < 1 || problems > MOST_PROBLEMS) {
            throw new InvalidInput("problems", Long.toString(problems), "1 to " + MOST_PROBLEMS, "");
        }
        LeafJson.send(answer.status(201), desk.make(asked.text("engine"), (int) problems, asked.act()));
    }

    private void takeOut(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn"));
        String id = desk.get(answer.pathParam("sheet")).head().id();
        LeafJson.send(answer, leaves.takeOut(LeafKind.PRACTICE, id, asked.number("basedOn"), asked.act()));
    }

    private void print(Context answer) {
        PracticeDesk.Kept kept = desk.get(answer.pathParam("sheet"));
        OrderInFull order = desk.printedBy(kept);
        List<String> why =
                kept.stale().values().stream().flatMap(List::stream).distinct().toList();
        Stamp real = OrderDesk.stamp(order, why)
                .bearing(new SheetCode(
                        order.revision().number(),
                        kept.practice().engine(),
                        order.revision().code()));
        Stamp stamp = config.demo() ? real.inDemo() : real;
        String name = "practice-" + kept.practice().engine() + ".pdf";
        Answer.file(answer, name, "application/pdf", Papers.practice(kept.practice(), order, kept.stale(), stamp));
    }
}
