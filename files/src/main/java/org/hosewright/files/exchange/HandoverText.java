package org.hosewright.files.exchange;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.exchange.HandedHose;
import org.hosewright.ledger.exchange.HandedNozzle;
import org.hosewright.ledger.exchange.HandedOrder;
import org.hosewright.ledger.exchange.HandedPackage;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.kit.Coupling;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** A handover as text: canonical JSON (RFC 8785), every quantity with its unit. */
final class HandoverText {
    private final UnitSystem units;
    private final QuantityShown shown;

    private HandoverText(UnitSystem units) {
        this.units = units;
        this.shown = QuantityShown.of(units);
    }

    static String write(Handover handover) {
        return CanonicalJson.text(fields(handover));
    }

    /** The same as plain keys and values. */
    static Map<String, Object> fields(Handover handover) {
        return new HandoverText(handover.units()).tree(handover);
    }

    /** The handover that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is none of this edition, and where it is not
     */
    static Handover read(String text, String source) {
        return new HandoverReader(source).handover(text);
    }

    private Map<String, Object> tree(Handover handover) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("company", handover.company());
        tree.put("units", units.word());
        tree.put("issued", handover.issued().toString());
        tree.put("until", handover.until().toString());
        if (handover.isWithdrawal()) {
            tree.put("withdrawn", handover.withdrawn());
            return tree;
        }
        handover.order().ifPresent(order -> tree.put("order", order(order)));
        tree.put("packages", handover.packages().stream().map(this::handed).toList());
        return tree;
    }

    private static Map<String, Object> order(HandedOrder order) {
        return Map.of(
                "number",
                order.number(),
                "code",
                order.code(),
                "signed",
                order.signed().toString(),
                "by",
                order.by());
    }

    private Map<String, Object> handed(HandedPackage handed) {
        OrderedLine line = handed.line();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("package", line.hosePackage());
        tree.put("engine", line.engine());
        tree.put("discharge", line.discharge());
        tree.put("gauge", line.gauge());
        tree.put("evidence", line.evidence());
        tree.put("floorAdder", text(line.floorAdder()));
        put(tree, "mostGauge", line.mostGauge().map(this::text));
        tree.put("longestSafe", text(line.longestSafe()));
        tree.put("hose", handed.hose().stream().map(this::hose).toList());
        tree.put("nozzle", nozzle(handed.nozzle()));
        handed.crew().ifPresent(people -> tree.put("crew", people));
        put(tree, "target", handed.target().map(this::text));
        put(tree, "least", handed.least().map(this::text));
        tree.put("pressures", line.pressures().stream().map(this::pressure).toList());
        return tree;
    }

    private Map<String, Object> hose(HandedHose hose) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", hose.name());
        tree.put("length", text(hose.length()));
        tree.put("diameter", size(hose.diameter()));
        tree.put("section", text(hose.section()));
        put(tree, "coupling", hose.coupling().map(this::coupling));
        return tree;
    }

    private Map<String, Object> nozzle(HandedNozzle nozzle) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", nozzle.name());
        tree.put("what", nozzle.what());
        tree.put("flow", text(nozzle.flow()));
        tree.put("at", text(nozzle.at()));
        put(tree, "coupling", nozzle.coupling().map(this::coupling));
        return tree;
    }

    private Map<String, Object> pressure(OrderedPressure pressure) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("length", text(pressure.length()));
        tree.put("figure", text(pressure.figure()));
        tree.put("flow", text(pressure.flow()));
        tree.put("tip", text(pressure.tip()));
        tree.put("reaction", text(pressure.reaction()));
        tree.put("tested", pressure.tested());
        return tree;
    }

    private String coupling(Coupling coupling) {
        return size(coupling.size()) + " " + coupling.kind();
    }

    private String size(Length size) {
        return shown.file(size, units == UnitSystem.US ? Unit.IN : Unit.MM);
    }

    /** As printed: more digits than people set or read would say more than is known. */
    private String text(Quantity quantity) {
        return quantity instanceof Length ? shown.fileText(Known.of(quantity)) : shown.text(quantity);
    }

    private static void put(Map<String, Object> tree, String key, Optional<?> value) {
        value.ifPresent(there -> tree.put(key, there));
    }
}
