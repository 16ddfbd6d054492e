package org.hosewright.ledger.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** A neighbour's package side by side with what they handed over before and with our own of the same name.
 *
 * @param theirs the package; as it was before where it is handed over no longer
 * @param gone true where it is handed over no longer
 * @param rows by length, shortest first
 * @param conflicts what bears the same name here and is not the same thing, and what does not fit, as sentences
 */
public record Beside(HandedPackage theirs, boolean gone, List<Row> rows, List<String> conflicts) {
    public Beside {
        rows = List.copyOf(rows);
        conflicts = List.copyOf(conflicts);
    }

    /** The figures at one length of hose.
     *
     * @param length hose length
     * @param before what they handed over before
     * @param now what they hand over now
     * @param ours what our own order says for our own package of that name: another line, never to be exchanged
     */
    public record Row(
            Length length,
            Optional<OrderedPressure> before,
            Optional<OrderedPressure> now,
            Optional<OrderedPressure> ours) {}

    /** Our own side.
     *
     * @param kit what we have
     * @param inForce our own order, where there is one
     */
    public record Own(Kit kit, Optional<OrderSet> inForce) {}

    /** Every package of a handover beside ours; those that are handed over no longer come last.
     *
     * @param before what they handed over before, where anything is held
     */
    public static List<Beside> of(Handover now, Optional<Handover> before, Own own) {
        List<Beside> all = new ArrayList<>();
        for (HandedPackage theirs : now.packages()) {
            all.add(beside(Optional.of(theirs), before.flatMap(old -> old.find(theirs.name())), own));
        }
        before.ifPresent(old -> old.packages().stream()
                .filter(one -> now.find(one.name()).isEmpty())
                .forEach(one -> all.add(beside(Optional.empty(), Optional.of(one), own))));
        return all;
    }

    private static Beside beside(Optional<HandedPackage> now, Optional<HandedPackage> before, Own own) {
        HandedPackage theirs = now.or(() -> before).orElseThrow();
        Map<Long, OrderedPressure> old = byLength(before.map(HandedPackage::line));
        Map<Long, OrderedPressure> is = byLength(now.map(HandedPackage::line));
        Map<Long, OrderedPressure> ours = byLength(ourLine(theirs.name(), own));
        Map<Long, Length> lengths = new TreeMap<>();
        List.of(old, is, ours).forEach(side -> side.forEach((key, figure) -> lengths.put(key, figure.length())));
        List<Row> rows = lengths.entrySet().stream()
                .map(entry -> new Row(
                        entry.getValue(),
                        Optional.ofNullable(old.get(entry.getKey())),
                        Optional.ofNullable(is.get(entry.getKey())),
                        Optional.ofNullable(ours.get(entry.getKey()))))
                .toList();
        return new Beside(theirs, now.isEmpty(), rows, new Conflicts(own.kit()).of(theirs));
    }

    private static Optional<OrderedLine> ourLine(String name, Own own) {
        return own.inForce().stream()
                .flatMap(set -> set.lines().stream())
                .filter(line -> line.hosePackage().equals(name))
                .findFirst();
    }

    /** The figures that stand, by length in whole millimetres. */
    private static Map<Long, OrderedPressure> byLength(Optional<OrderedLine> line) {
        Map<Long, OrderedPressure> found = new LinkedHashMap<>();
        line.ifPresent(there -> there.pressures().stream()
                .filter(OrderedPressure::stands)
                .forEach(figure -> found.put(Math.round(figure.length().millimetres()), figure)));
        return found;
    }
}
