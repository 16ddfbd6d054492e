package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.error.InvalidInput;

/** What is laid from one engine, and what feeds it.
 *
 * @param lines from each discharge; not empty, each discharge and each outlet's name once
 * @param joins what follows where lines meet, by the name of the join
 * @param supply what feeds the engine, where it is known
 * @param pump how its pump answers
 */
public record Lay(List<FromDischarge> lines, Map<String, Joint> joins, Optional<Supply> supply, PumpMode pump) {
    public Lay {
        lines = List.copyOf(lines);
        joins = Collections.unmodifiableMap(new LinkedHashMap<>(joins));
        if (lines.isEmpty()) {
            throw new InvalidInput("lines of the lay", "", "at least one line", "");
        }
        Set<String> discharges = new LinkedHashSet<>();
        Set<String> outlets = new LinkedHashSet<>();
        for (FromDischarge line : lines) {
            requireNew("discharge with two lines", line.discharge().id(), discharges);
            line.leg().outlets().forEach(outlet -> requireNew("name of two tips", outlet.id(), outlets));
        }
        for (Joint joint : joins.values()) {
            joint.leg().outlets().forEach(outlet -> requireNew("name of two tips", outlet.id(), outlets));
        }
        Joining.check(lines, joins);
    }

    public Lay(List<FromDischarge> lines) {
        this(lines, Map.of(), Optional.empty(), new PumpMode.Governor());
    }

    /** What is laid from a discharge. */
    public record FromDischarge(Discharge discharge, Leg leg) {}

    public Lay withSupply(Optional<Supply> other) {
        return new Lay(lines, joins, other, pump);
    }

    public Lay withPump(PumpMode other) {
        return new Lay(lines, joins, supply, other);
    }

    /** Every outlet, shut ones too, in laying order; those behind joins last. */
    public List<End.Outlet> outlets() {
        List<End.Outlet> all = new ArrayList<>();
        lines.forEach(line -> all.addAll(line.leg().outlets()));
        joins.values().forEach(joint -> all.addAll(joint.leg().outlets()));
        return List.copyOf(all);
    }

    /** The same lay with one outlet opened if it is shut, shut if it is open. */
    public Lay turned(String outlet) {
        return changed(one -> one.id().equals(outlet) ? one.turned() : one);
    }

    /** The same lay with every outlet changed. */
    Lay changed(UnaryOperator<End.Outlet> change) {
        return mapped(leg -> leg.changed(change));
    }

    /** The same lay with the leg of every line and join changed. */
    Lay mapped(UnaryOperator<Leg> change) {
        List<FromDischarge> changed = lines.stream()
                .map(line -> new FromDischarge(line.discharge(), change.apply(line.leg())))
                .toList();
        Map<String, Joint> behind = new LinkedHashMap<>();
        joins.forEach((name, joint) -> behind.put(name, new Joint(joint.appliance(), change.apply(joint.leg()))));
        return new Lay(changed, behind, supply, pump);
    }

    private static void requireNew(String what, String id, Set<String> seen) {
        if (!seen.add(id)) {
            throw new InvalidInput(what, id, "each of them once", "");
        }
    }
}
