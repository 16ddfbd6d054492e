package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.BiFunction;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.kit.Revision;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.server.setup.ServerConfig;

/** The papers for the rig: looked at first, then as PDF, all from one set of numbers. */
final class PaperRoutes {
    private static final String PDF = "application/pdf";

    private final CurrentKit kit;
    private final ServerConfig config;

    PaperRoutes(CurrentKit kit, ServerConfig config) {
        this.kit = kit;
        this.config = config;
    }

    List<Route> list() {
        return List.of(
                Route.get("/papers", this::preview),
                pdf("/papers/pump-card.pdf", "pump-card.pdf", Papers::pumpCard),
                pdf("/papers/tags.pdf", "discharge-tags.pdf", Papers::tags),
                pdf("/papers/pocket-card.pdf", "pocket-card.pdf", Papers::pocketCard));
    }

    /** What stands across every sheet until somebody signs it. */
    static Stamp stamp(ServerConfig config) {
        return config.demo() ? Stamp.DEMO : Stamp.UNSIGNED;
    }

    private Route pdf(String path, String name, BiFunction<CardSet, Stamp, byte[]> paper) {
        return Route.get(path, answer -> Answer.file(answer, name, PDF, paper.apply(set(answer), stamp(config))));
    }

    private CardSet set(Context request) {
        Kit now = kit.get().document().kit();
        LocalDate today = LocalDate.ofInstant(config.clock().instant(), ZoneId.of(now.zone()));
        return CardAnalysis.of(now, Revision.of(now), today, way(request));
    }

    private static Rounding.Way way(Context request) {
        String name = Queried.find(request, "round").orElse("nearest");
        return switch (name) {
            case "nearest" -> Rounding.Way.NEAREST;
            case "up" -> Rounding.Way.UP;
            default -> throw new InvalidInput("round", name, "nearest or up", "");
        };
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
