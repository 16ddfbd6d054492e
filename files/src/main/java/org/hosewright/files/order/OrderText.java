package org.hosewright.files.order;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.canonical.Digest;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** A set of ordered pressures as text: canonical JSON (RFC 8785), every quantity with its unit, one spelling a set. */
public final class OrderText {
    /** The edition of the format. */
    static final int FORMAT = 1;

    private static final int CODE_DIGITS = 8;

    private final QuantityShown shown;

    private OrderText(QuantityShown shown) {
        this.shown = shown;
    }

    public static String write(OrderSet set) {
        return CanonicalJson.text(new OrderText(QuantityShown.of(set.units())).tree(set));
    }

    /** The short code that every sheet of a set bears: the first eight hexadecimal digits of its text's SHA-256. */
    public static String code(String text) {
        return Digest.ofText(text).substring(0, CODE_DIGITS);
    }

    /** The set that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a set of this edition, and where it is not
     */
    public static OrderSet read(String text) {
        return new OrderReader(text).set();
    }

    private Map<String, Object> tree(OrderSet set) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("units", set.units().word());
        tree.put("made", set.made().toString());
        tree.put("rounding", RoundingWord.of(set.way()));
        tree.put("lines", set.lines().stream().map(this::line).toList());
        return tree;
    }

    private Map<String, Object> line(OrderedLine line) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("engine", line.engine());
        tree.put("discharge", line.discharge());
        tree.put("package", line.hosePackage());
        tree.put("gauge", line.gauge());
        tree.put("evidence", line.evidence());
        tree.put("floorAdder", text(line.floorAdder()));
        line.mostGauge().ifPresent(most -> tree.put("mostGauge", text(most)));
        tree.put("longestSafe", text(line.longestSafe()));
        tree.put("pressures", line.pressures().stream().map(this::pressure).toList());
        return tree;
    }

    private Map<String, Object> pressure(OrderedPressure pressure) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("length", text(pressure.length()));
        tree.put("figure", text(pressure.figure()));
        tree.put("flow", shown.text(pressure.flow()));
        tree.put("tip", shown.text(pressure.tip()));
        tree.put("reaction", shown.text(pressure.reaction()));
        tree.put("tested", pressure.tested());
        if (!pressure.refusal().isEmpty()) {
            tree.put("refusal", List.copyOf(pressure.refusal()));
        }
        pressure.nearest().ifPresent(nearest -> tree.put("nearest", text(nearest)));
        return tree;
    }

    private String text(Quantity quantity) {
        return shown.fileText(Known.of(quantity));
    }
}
