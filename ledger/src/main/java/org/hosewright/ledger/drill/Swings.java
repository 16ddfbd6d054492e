package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.LeavingOut;
import org.hosewright.evidence.calibration.Terms;
import org.hosewright.evidence.calibration.Without;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** Finds how far each number of a night moves when single readings are left out. */
final class Swings {
    private final Kit kit;
    private final UnitSystem units;
    private final Terms terms;
    private final List<LeftOut> leftOut;
    private final Map<String, Swing> swings = new LinkedHashMap<>();

    private Swings(Kit kit, Terms terms, List<LeftOut> leftOut) {
        this.kit = kit;
        this.units = kit.units();
        this.terms = terms;
        this.leftOut = leftOut;
    }

    /** The steadiness of a night.
     *
     * @param lines the lines flown
     * @param deliveries what those need
     */
    static Steadiness of(Kit kit, Calibration night, List<TestedLine> lines, Deliveries deliveries) {
        LeavingOut leaving = night.leavingOut();
        if (leaving.listUsed().size() < 2) {
            return Steadiness.NONE;
        }
        List<LeftOut> leftOut = new ArrayList<>();
        for (String reading : leaving.listUsed()) {
            Without without = leaving.without(reading);
            leftOut.add(new LeftOut(reading, without.terms(), deliveries.needed(without.belief(), lines)));
        }
        Swings swings = new Swings(kit, night.terms(), leftOut);
        lines.forEach(swings::losses);
        swings.factors();
        swings.pressures(deliveries.needed(lines));
        return new Steadiness(leftOut, List.copyOf(swings.swings.values()));
    }

    private void losses(TestedLine line) {
        Flow flow = KitLines.nozzle(kit, line.nozzle(), line.setting())
                .rated(line.setting())
                .flowAt();
        for (String hose : line.hoses()) {
            each("the loss of " + hose, hose, Terms::hoses, Measure.hose(units, flow));
        }
        each("the piping of " + line.discharge(), line.discharge(), Terms::discharges, Measure.piping(units, flow));
    }

    private void factors() {
        for (String tip : terms.nozzles().keySet()) {
            each("the flow of " + tip + " against its rating", tip, Terms::nozzles, Measure.factor(units));
        }
        for (String meter : terms.meters().keySet()) {
            each("what " + meter + " reads against the true flow", meter, Terms::meters, Measure.factor(units));
        }
    }

    private <Q extends Quantity> void each(
            String what, String id, Function<Terms, Map<String, Known<Q>>> numbers, Measure<Q> measure) {
        Optional.ofNullable(numbers.apply(terms).get(id))
                .ifPresent(all -> add(
                        what,
                        all,
                        out -> Optional.ofNullable(numbers.apply(out.terms()).get(id)),
                        measure));
    }

    /** The pressure needed at the longest length of each line. */
    private void pressures(List<NeededRow> needed) {
        Map<TestedLine, NeededRow> longest = new LinkedHashMap<>();
        needed.forEach(row -> longest.put(row.line(), row));
        for (NeededRow row : longest.values()) {
            String line = longest.size() > 1
                    ? " from " + row.line().discharge() + " with " + row.line().nozzle()
                    : "";
            String what = "the pump pressure needed at " + Measure.text(units, row.length()) + line + ", level,";
            add(what, row.pump(), out -> find(out, row), Measure.pressure(units));
        }
    }

    private static Optional<Known<Pressure>> find(LeftOut out, NeededRow row) {
        return out.needed().stream()
                .filter(other ->
                        other.line().equals(row.line()) && other.length().equals(row.length()))
                .map(NeededRow::pump)
                .findFirst();
    }

    private <Q extends Quantity> void add(
            String what, Known<Q> all, Function<LeftOut, Optional<Known<Q>>> left, Measure<Q> measure) {
        Map<String, Known<Q>> without = new LinkedHashMap<>();
        List<String> untold = new ArrayList<>();
        for (LeftOut out : leftOut) {
            Optional<Known<Q>> found = left.apply(out);
            found.ifPresent(known -> without.put(out.reading(), known));
            if (found.isEmpty()) {
                untold.add(out.reading());
            }
        }
        swings.putIfAbsent(what, new SwingWords<>(what, all, measure).swing(without, untold));
    }
}
