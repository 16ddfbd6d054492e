package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;
import org.hosewright.ledger.ready.RigReady;

/** The morning's look: per engine, whether its ordered pressures are signed, still so, on the rig and read. */
final class OrderReadiness {
    private final OrderDesk desk;
    private final Map<String, RigReady> rigs;

    /** The engines of a kit.
     *
     * @param rigs what each rests on and what is due, by engine
     */
    OrderReadiness(OrderDesk desk, Map<String, RigReady> rigs) {
        this.desk = desk;
        this.rigs = Map.copyOf(rigs);
    }

    ObjectNode json(Kit kit) {
        OrderBook book = desk.book();
        var morning = new Morning(
                kit, desk.today(kit), desk.beds().list(), desk.beds().reserves());
        ObjectNode json = Answer.object();
        book.proposed().ifPresent(revision -> json.put("waiting", revision.number()));
        ArrayNode engines = json.putArray("engines");
        if (book.inForce().isEmpty()) {
            engines(morning)
                    .forEach(engine -> engines.add(
                            whole(want(Answer.object().put("id", engine), "No order is signed for it."), morning)));
            return json;
        }
        OrderInFull order = desk.look(book, book.inForce().get().number());
        json.put("inForce", order.revision().number());
        json.set(
                "signed",
                RecordJson.mark(order.revision().signature().orElseThrow().mark()));
        engines(morning).forEach(engine -> engines.add(whole(engine(order, engine), morning)));
        return json;
    }

    /** What every rig is looked at with. */
    private record Morning(Kit kit, LocalDate today, List<BedDesk.Kept> beds, Map<String, String> reserves) {}

    private ObjectNode whole(ObjectNode json, Morning morning) {
        String engine = json.path("id").asText();
        Optional.ofNullable(rigs.get(engine)).ifPresent(ready -> RigReadyShown.put(json, ready, morning.today()));
        morning.beds().stream()
                .filter(kept -> kept.bed().engine().equals(engine))
                .forEach(kept -> json.set("bed", BedShown.look(kept, morning.kit(), morning.today())));
        return serving(json, engine, morning.reserves());
    }

    /** Says which rig serves: one that is replaced wants nothing, the reserve rig goes by its own order. */
    private static ObjectNode serving(ObjectNode json, String engine, Map<String, String> reserves) {
        String reserve = reserves.get(engine);
        if (reserve != null) {
            json.put(
                    "serving", reserve + " serves in its place; the order of " + reserve + " applies, not this one's.");
            json.putArray("wants");
            return json;
        }
        String replaced = reserves.entrySet().stream()
                .filter(entry -> entry.getValue().equals(engine))
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(" and "));
        return replaced.isEmpty()
                ? json
                : json.put("serving", "In service in the place of " + replaced + ", by its own order.");
    }

    /** Engines that carry a package or serve in the place of another. */
    private static Set<String> engines(Morning morning) {
        Set<String> engines = new LinkedHashSet<>();
        morning.kit().packages().values().forEach(named -> engines.add(named.engine()));
        engines.addAll(morning.reserves().values());
        return engines;
    }

    private static ObjectNode engine(OrderInFull order, String engine) {
        ObjectNode json = Answer.object().put("id", engine);
        json.putArray("wants");
        if (!order.set().engines().contains(engine)) {
            return want(json, "The order has no number for it.");
        }
        figures(json, order, engine);
        stale(json, order, engine);
        if (order.revision().fitted(engine).isEmpty()) {
            want(json, "Nobody has confirmed that the new tags are on it.");
        }
        if (order.revision().of(OrderStep.Kind.ACKNOWLEDGED, engine).isEmpty()) {
            want(json, "No driver has acknowledged the order.");
        }
        order.revision().openReports(engine).forEach(report -> want(json, "Reported: " + report.note()));
        return json;
    }

    /** How many figures are ordered, how many of them were flown as far, how many are stale. */
    private static void figures(ObjectNode json, OrderInFull order, String engine) {
        int ordered = 0;
        int tested = 0;
        int stale = 0;
        for (OrderedLine line : order.set().linesOf(engine)) {
            List<OrderedPressure> standing =
                    line.pressures().stream().filter(OrderedPressure::stands).toList();
            ordered += standing.size();
            tested += (int) standing.stream().filter(OrderedPressure::tested).count();
            stale += order.stale().isStale(line.hosePackage()) ? standing.size() : 0;
        }
        json.putObject("figures").put("ordered", ordered).put("tested", tested).put("stale", stale);
        order.revision().fitted(engine).ifPresent(step -> json.set("fitted", RecordJson.mark(step.mark())));
        ArrayNode readers = json.putArray("acknowledged");
        order.revision()
                .of(OrderStep.Kind.ACKNOWLEDGED, engine)
                .forEach(step -> readers.add(RecordJson.mark(step.mark())));
    }

    private static void stale(ObjectNode json, OrderInFull order, String engine) {
        List<String> lines = order.set().linesOf(engine).stream()
                .map(OrderedLine::hosePackage)
                .filter(order.stale()::isStale)
                .toList();
        if (!lines.isEmpty()) {
            String count = lines.size() == 1 ? "1 line:" : lines.size() + " lines:";
            want(json, "Its ordered pressures are stale on " + count);
            lines.stream()
                    .flatMap(line -> order.stale().why(line).stream())
                    .distinct()
                    .forEach(why -> want(json, why));
        }
    }

    private static ObjectNode want(ObjectNode json, String says) {
        json.withArray("wants").add(says);
        return json;
    }
}
