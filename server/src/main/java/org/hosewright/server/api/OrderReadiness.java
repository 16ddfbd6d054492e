package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.Set;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderStep;

/** The morning's look: per engine, whether its ordered pressures are signed, still so, on the rig and read. */
final class OrderReadiness {
    private final OrderDesk desk;

    OrderReadiness(OrderDesk desk) {
        this.desk = desk;
    }

    ObjectNode json(Kit kit) {
        OrderBook book = desk.book();
        ObjectNode json = Answer.object();
        book.proposed().ifPresent(revision -> json.put("waiting", revision.number()));
        ArrayNode engines = json.putArray("engines");
        if (book.inForce().isEmpty()) {
            engines(kit).forEach(engine -> want(engines.addObject().put("id", engine), "No order is signed for it."));
            return json;
        }
        OrderInFull order = desk.look(book, book.inForce().get().number());
        json.put("inForce", order.revision().number());
        engines(kit).forEach(engine -> engines.add(engine(order, engine)));
        return json;
    }

    /** Engines that carry a package. */
    private static Set<String> engines(Kit kit) {
        Set<String> engines = new LinkedHashSet<>();
        kit.packages().values().forEach(named -> engines.add(named.engine()));
        return engines;
    }

    private static ObjectNode engine(OrderInFull order, String engine) {
        ObjectNode json = Answer.object().put("id", engine);
        json.putArray("wants");
        if (!order.set().engines().contains(engine)) {
            return want(json, "The order has no number for it.");
        }
        long stale = order.set().linesOf(engine).stream()
                .filter(line -> order.stale().isStale(line.hosePackage()))
                .count();
        if (stale > 0) {
            want(json, "Its ordered pressures are stale on " + (stale == 1 ? "1 line." : stale + " lines."));
        }
        if (order.revision().fitted(engine).isEmpty()) {
            want(json, "Nobody has confirmed that the new tags are on it.");
        }
        if (order.revision().of(OrderStep.Kind.ACKNOWLEDGED, engine).isEmpty()) {
            want(json, "No driver has acknowledged the order.");
        }
        order.revision().openReports(engine).forEach(report -> want(json, "Reported: " + report.note()));
        return json;
    }

    private static ObjectNode want(ObjectNode json, String says) {
        json.withArray("wants").add(says);
        return json;
    }
}
