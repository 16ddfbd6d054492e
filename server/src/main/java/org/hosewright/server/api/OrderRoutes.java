package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.files.order.RoundingWord;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.Orders;
import org.hosewright.server.door.Admission;
import org.hosewright.server.door.Visitor;

/** Ordered pressures: proposed, looked at, signed, fitted, acknowledged, reported on. */
final class OrderRoutes {
    private static final Admission STEPPING = Admission.of(Hat.APPROVER, Hat.APPARATUS_OFFICER, Hat.OPERATOR);

    private final Orders orders;
    private final SigningRoutes signing;
    private final OrderDesk desk;

    OrderRoutes(Orders orders, SigningRoutes signing, OrderDesk desk) {
        this.orders = orders;
        this.signing = signing;
        this.desk = desk;
    }

    List<Route> list() {
        return List.of(
                Route.get("/orders", this::book),
                Route.post("/orders", Hat.ANALYST, this::propose),
                Route.get("/orders/{number}", answer -> send(answer, number(answer))),
                Route.post("/orders/{number}/steps", STEPPING, this::step),
                Route.ask("/sheet-codes", this::scanned));
    }

    private void book(Context answer) {
        OrderBook book = desk.book();
        ObjectNode json = Answer.object();
        ArrayNode list = json.putArray("orders");
        for (int i = book.revisions().size() - 1; i >= 0; i--) {
            OrderRevision revision = book.revisions().get(i);
            ObjectNode one = list.addObject().put("number", revision.number());
            one.put("code", revision.code())
                    .put("standing", book.standing(revision).word());
            one.set("proposed", RecordJson.mark(revision.mark()));
            revision.signature().ifPresent(step -> one.set("signed", RecordJson.mark(step.mark())));
        }
        book.inForce().ifPresent(revision -> json.put("inForce", revision.number()));
        book.proposed().ifPresent(revision -> json.put("proposed", revision.number()));
        Answer.json(answer, json);
    }

    private void propose(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "round"));
        var way = RoundingWord.way(asked.findText("round").orElse("nearest"));
        send(answer, desk.propose(way, asked.act()).number());
    }

    private void step(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "kind", "engine", "note"));
        long number = number(answer);
        String engine = asked.findText("engine").orElse("");
        if (!engine.isEmpty()) {
            desk.look(number).set().linesOf(engine);
        }
        OrderStep.Kind kind = kind(asked.text("kind"));
        Visitor.of(answer).require(kind.hat());
        var step = new Orders.Step(number, kind, engine, asked.findText("note").orElse(""));
        orders.step(step, signing.rule().signers(), asked.act());
        send(answer, number);
    }

    private void scanned(Context answer) {
        Asked asked = Asked.of(answer, Set.of("text", "photograph"));
        SheetCode code = asked.findText("text").map(SheetCode::parse).orElseGet(() -> shown(asked.text("photograph")));
        Answer.json(answer, desk.scanned(code));
    }

    private static SheetCode shown(String photograph) {
        try {
            return SheetCode.find(Base64.getDecoder().decode(photograph))
                    .orElseThrow(() -> new InvalidInput(
                            "photograph", "no code to be made out", "a closer, sharper one of the square code", ""));
        } catch (IllegalArgumentException e) {
            throw new InvalidInput("photograph", "not base64", "a picture, base64-encoded", "");
        }
    }

    private void send(Context answer, long number) {
        Answer.json(answer, desk.shown(number));
    }

    private static OrderStep.Kind kind(String word) {
        return Arrays.stream(OrderStep.Kind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new InvalidInput(
                        "kind",
                        word,
                        String.join(
                                ", ",
                                Arrays.stream(OrderStep.Kind.values())
                                        .map(OrderStep.Kind::word)
                                        .toList()),
                        ""));
    }

    static long number(String text) {
        if (!text.matches("[0-9]{1,9}")) {
            throw new InvalidInput("number of the order", text, "a whole number", "");
        }
        return Long.parseLong(text);
    }

    private static long number(Context request) {
        return number(request.pathParam("number"));
    }
}
