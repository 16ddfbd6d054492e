package org.hosewright.ledger.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;

/** One box of a card before and after: old and new figure for one package at one length.
 *
 * @param line the line it belongs to, as it is now; as it was where it is gone
 * @param length hose length
 * @param was what stood there; empty where nothing did
 * @param is what stands there now; empty where nothing does
 */
public record OrderChange(
        OrderedLine line, Length length, Optional<OrderedPressure> was, Optional<OrderedPressure> is) {
    /** A thousandth of a psi: nearer than any figure is rounded [Pa]. */
    private static final double SAME_PA = 7;

    /** Every box of two sets, in the order of the later one; what is gone comes last. */
    public static List<OrderChange> of(Optional<OrderSet> before, OrderSet after) {
        Map<String, OrderedLine> old = new LinkedHashMap<>();
        before.ifPresent(set -> set.lines().forEach(line -> old.put(line.hosePackage(), line)));
        List<OrderChange> changes = new ArrayList<>();
        for (OrderedLine line : after.lines()) {
            changes.addAll(boxes(line, Optional.ofNullable(old.remove(line.hosePackage())), Optional.of(line)));
        }
        old.values().forEach(line -> changes.addAll(boxes(line, Optional.of(line), Optional.empty())));
        return changes;
    }

    /** True where the figure, or whether it stands at all, is not what it was. */
    public boolean changed() {
        Optional<OrderedPressure> old = was.filter(OrderedPressure::stands);
        Optional<OrderedPressure> now = is.filter(OrderedPressure::stands);
        if (old.isEmpty() || now.isEmpty()) {
            return old.isPresent() != now.isPresent();
        }
        double apart_Pa = old.get().figure().pascals() - now.get().figure().pascals();
        return Math.abs(apart_Pa) > SAME_PA;
    }

    private static List<OrderChange> boxes(OrderedLine line, Optional<OrderedLine> was, Optional<OrderedLine> is) {
        Map<Long, OrderedPressure> old = byLength(was);
        Map<Long, OrderedPressure> now = byLength(is);
        Map<Long, Length> lengths = new LinkedHashMap<>();
        now.forEach((key, pressure) -> lengths.put(key, pressure.length()));
        old.forEach((key, pressure) -> lengths.putIfAbsent(key, pressure.length()));
        return lengths.entrySet().stream()
                .map(entry -> new OrderChange(
                        line,
                        entry.getValue(),
                        Optional.ofNullable(old.get(entry.getKey())),
                        Optional.ofNullable(now.get(entry.getKey()))))
                .toList();
    }

    /** By length in whole millimetres. */
    private static Map<Long, OrderedPressure> byLength(Optional<OrderedLine> line) {
        Map<Long, OrderedPressure> found = new LinkedHashMap<>();
        line.ifPresent(there -> there.pressures()
                .forEach(pressure -> found.put(Math.round(pressure.length().metres() * 1000), pressure)));
        return found;
    }
}
