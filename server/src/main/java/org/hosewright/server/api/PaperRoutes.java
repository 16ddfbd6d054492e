package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.order.RoundingWord;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.server.setup.ServerConfig;

/** The papers for the rig: looked at first, then as PDF, all from one set of numbers. */
final class PaperRoutes {
    private static final String PDF = "application/pdf";

    private final CurrentKit kit;
    private final ServerConfig config;
    private final OrderDesk desk;

    PaperRoutes(CurrentKit kit, OrderDesk desk, ServerConfig config) {
        this.kit = kit;
        this.desk = desk;
        this.config = config;
    }

    List<Route> list() {
        return List.of(
                Route.get("/papers", this::preview),
                pdf("/papers/pump-card.pdf", "pump-card.pdf", Papers::pumpCard),
                pdf("/papers/tags.pdf", "discharge-tags.pdf", Papers::tags),
                pdf("/papers/pocket-card.pdf", "pocket-card.pdf", Papers::pocketCard),
                order("order", Papers::order),
                order("changes", Papers::changes),
                order("readers", Papers::readers));
    }

    /** What stands across every sheet until somebody signs it. */
    static Stamp stamp(ServerConfig config) {
        return config.demo() ? Stamp.DEMO : Stamp.UNSIGNED;
    }

    private Route pdf(String path, String name, BiFunction<CardSet, Stamp, byte[]> paper) {
        return Route.get(path, answer -> {
            Sheets print = print(answer);
            Answer.file(answer, name, PDF, paper.apply(print.cards(), print.stamp()));
        });
    }

    /** The order asked for, or else the kit as it stands. */
    private Sheets print(Context request) {
        Optional<String> order = Queried.find(request, "order");
        if (order.isEmpty()) {
            return new Sheets(set(request), stamp(config));
        }
        Optional<String> engine = Queried.find(request, "engine");
        OrderDesk.Print print = desk.print(OrderRoutes.number(order.get()), engine);
        List<String> engines = print.cards().engines().stream()
                .map(card -> card.engine().engine().id())
                .toList();
        return new Sheets(print.cards(), stamped(print, engines));
    }

    private Route order(String name, BiFunction<OrderInFull, Stamp, byte[]> paper) {
        return Route.get("/orders/{number}/" + name + ".pdf", answer -> {
            OrderDesk.Print print = desk.print(OrderRoutes.number(answer.pathParam("number")), Optional.empty());
            String file = name + "-" + print.order().revision().number() + ".pdf";
            Answer.file(
                    answer,
                    file,
                    PDF,
                    paper.apply(
                            print.order(), stamped(print, print.order().set().engines())));
        });
    }

    private Stamp stamped(OrderDesk.Print print, List<String> engines) {
        Stamp stamp = config.demo() ? print.stamp().inDemo() : print.stamp();
        long number = print.order().revision().number();
        return stamp.bearing(
                SheetCode.ofEngines(number, engines, print.order().revision().code()));
    }

    /** Numbers about to be printed, and what stands across them. */
    private record Sheets(CardSet cards, Stamp stamp) {}

    private CardSet set(Context request) {
        CurrentKit.Read read = kit.get();
        Kit whole = read.document().kit();
        Kit now = Queried.find(request, "engine").map(whole::ofEngine).orElse(whole);
        LocalDate today = LocalDate.ofInstant(config.clock().instant(), ZoneId.of(now.zone()));
        return CardAnalysis.of(now, read.code(), today, way(request))
                .replaced(desk.beds().reserves());
    }

    private static Rounding.Way way(Context request) {
        String name = Queried.find(request, "round").orElse("nearest");
        return RoundingWord.way(name);
    }

    private void preview(Context answer) {
        CardSet set = set(answer);
        ObjectNode json = Answer.object().put("revision", set.revision());
        json.put("made", set.made().toString()).put("stamp", stamp(config).words());
        json.put("stampMeans", stamp(config).meaning());
        json.put("step", QuantityShown.of(set.kit().units()).text(set.step()));
        ArrayNode engines = json.putArray("engines");
        for (EngineCard engine : set.engines()) {
            ArrayNode lines =
                    engines.addObject().put("id", engine.engine().engine().id()).putArray("lines");
            engine.lines().forEach(line -> lines.add(new CardShown(set, line).json()));
        }
        set.assumed().forEach(json.putArray("assumed")::add);
        Answer.json(answer, json);
    }
}
