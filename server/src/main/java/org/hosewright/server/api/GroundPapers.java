package org.hosewright.server.api;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.hosewright.documents.Papers;
import org.hosewright.documents.matter.Photograph;
import org.hosewright.documents.matter.StretchMatter;
import org.hosewright.documents.matter.WalkMatter;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.track.MapLayer;
import org.hosewright.files.walk.StretchText;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderedPressure;
import org.hosewright.ledger.stretch.KeptStretch;
import org.hosewright.ledger.stretch.StretchReport;
import org.hosewright.ledger.walk.MapShape;
import org.hosewright.ledger.walk.WalkReport;
import org.hosewright.server.setup.ServerConfig;

/** The papers about the ground. A pressure on them is an order only where one in force has it. */
final class GroundPapers {
    private static final String PDF = "application/pdf";

    private final Leaves leaves;
    private final StretchDesk stretches;
    private final WalkDesk walks;
    private final OrderDesk orders;
    private final ServerConfig config;

    GroundPapers(Leaves leaves, StretchDesk stretches, WalkDesk walks, OrderDesk orders, ServerConfig config) {
        this.leaves = leaves;
        this.stretches = stretches;
        this.walks = walks;
        this.orders = orders;
        this.config = config;
    }

    List<Route> list() {
        return List.of(
                Route.get("/stretches/{stretch}/sheet.pdf", this::stretch),
                Route.get("/walks/{walk}/reach.pdf", this::walk));
    }

    private void stretch(Context answer) {
        Leaf leaf = leaves.find(LeafKind.STRETCH, answer.pathParam("stretch"))
                .orElseThrow(() -> Refused.unknown("stretch"));
        KeptStretch kept = StretchText.read(leaf.text());
        StretchReport report = stretches.report(kept);
        Optional<Ordered> ordered = findOrdered(report);
        var matter = new StretchMatter(
                stretches.kit(),
                kept,
                report,
                ordered.map(Ordered::says),
                photographs(kept.site().pictures()),
                stretches.findWay(kept),
                shapes(),
                attributions(),
                Queried.find(answer, "private").filter("yes"::equals).isPresent());
        Stamp stamp = stamp(leaf.id(), ordered);
        String name = "stretch-" + Answer.fileName(kept.address(), "sheet") + ".pdf";
        Answer.file(answer, name, PDF, Papers.stretch(matter, stamp));
    }

    private Stamp stamp(String stretch, Optional<Ordered> ordered) {
        List<String> why = stretches.watch().why(stretch);
        Stamp real = why.isEmpty()
                ? ordered.map(Ordered::stamp).orElse(Stamp.UNSIGNED)
                : Stamp.staleStretch(OrderDesk.shortly(why));
        return config.demo() ? real.inDemo() : real;
    }

    private void walk(Context answer) {
        WalkDesk.Recorded walk = walks.get(answer.pathParam("walk"));
        WalkReport report = walks.report(walk, walks.chosen(answer, walk));
        var matter = new WalkMatter(
                walks.company(),
                walk.kept().name(),
                report,
                walks.findPicture(report),
                photographs(walk.kept().pictures()),
                shapes(),
                attributions());
        String name = Answer.fileName(walk.kept().name(), "walk") + ".pdf";
        Answer.file(answer, name, PDF, Papers.walk(matter, PaperRoutes.stamp(config)));
    }

    /** An ordered pressure for a stretch as it is planned.
     *
     * @param says the figure in words
     * @param stamp of the order
     */
    private record Ordered(String says, Stamp stamp) {}

    /** What the order in force says for the package at the planned length; an order's figures are for level ground. */
    private Optional<Ordered> findOrdered(StretchReport report) {
        OrderBook book = orders.book();
        return book.inForce().flatMap(revision -> {
            OrderInFull order = orders.look(book, revision.number());
            return order.set()
                    .find(report.named().id(), report.estimate().hose())
                    .map(pressure -> new Ordered(
                            says(order, pressure),
                            OrderDesk.stamp(
                                    order, order.stale().why(report.named().id()))));
        });
    }

    private static String says(OrderInFull order, OrderedPressure pressure) {
        Kit kit = order.kit();
        return "Ordered: " + QuantityShown.of(kit.units()).text(pressure.figure()) + " on level ground, " + order.name()
                + ".";
    }

    private List<Photograph> photographs(List<String> ids) {
        return ids.stream()
                .flatMap(id -> leaves.find(LeafKind.PICTURE, id).stream())
                .map(leaf -> new Photograph(leaf.title(), leaf.text()))
                .toList();
    }

    private List<MapShape> shapes() {
        return leaves.listWhole(LeafKind.LAYER).stream()
                .flatMap(leaf -> MapLayer.read(leaf.text()).listShapes().stream())
                .toList();
    }

    private List<String> attributions() {
        return leaves.listWhole(LeafKind.LAYER).stream()
                .map(leaf -> MapLayer.read(leaf.text()).attribution())
                .distinct()
                .sorted()
                .toList();
    }
}
