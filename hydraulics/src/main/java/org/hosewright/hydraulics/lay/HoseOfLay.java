package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hosewright.hydraulics.error.InvalidInput;

/** A chain of hose in a lay: the last one to a tip, or the one from a discharge or behind a join.
 *
 * @param lay the lay
 * @param place the tip, discharge or join; a tip goes before a discharge of the same name
 */
record HoseOfLay(Lay lay, String place) {

    HoseOfLay {
        Leg found = find(lay, place)
                .orElseThrow(() ->
                        new InvalidInput("hose of the lay", place, "one of " + String.join(", ", places(lay)), ""));
        if (found.runs().isEmpty()) {
            throw new InvalidInput("hose of the lay", place, "a place with hose", "");
        }
    }

    /** The chain with its end. */
    Leg leg() {
        return find(lay, place).orElseThrow();
    }

    /** How it is called behind "the hose". */
    String says() {
        if (isTip()) {
            return "to " + place;
        }
        return (lay.joins().containsKey(place) ? "behind " : "from ") + place;
    }

    /** The lay with this chain changed. */
    Lay changed(UnaryOperator<Leg> change) {
        if (isTip()) {
            return lay.mapped(leg -> last(leg, place, change));
        }
        Map<String, Joint> joins = new LinkedHashMap<>(lay.joins());
        joins.computeIfPresent(place, (name, joint) -> new Joint(joint.appliance(), change.apply(joint.leg())));
        List<Lay.FromDischarge> lines = new ArrayList<>();
        for (Lay.FromDischarge line : lay.lines()) {
            boolean here = !joins.containsKey(place) && line.discharge().id().equals(place);
            lines.add(here ? new Lay.FromDischarge(line.discharge(), change.apply(line.leg())) : line);
        }
        return new Lay(lines, joins, lay.supply(), lay.pump());
    }

    private boolean isTip() {
        return lay.outlets().stream().anyMatch(outlet -> outlet.id().equals(place));
    }

    private static Optional<Leg> find(Lay lay, String place) {
        List<Leg> found = new ArrayList<>();
        lay.mapped(leg -> last(leg, place, one -> {
            found.add(one);
            return one;
        }));
        Joint joint = lay.joins().get(place);
        if (joint != null) {
            found.add(joint.leg());
        }
        lay.lines().stream().filter(line -> line.discharge().id().equals(place)).forEach(line -> found.add(line.leg()));
        return found.stream().findFirst();
    }

    private static List<String> places(Lay lay) {
        List<String> names = new ArrayList<>();
        lay.outlets().forEach(outlet -> names.add(outlet.id()));
        lay.lines().forEach(line -> names.add(line.discharge().id()));
        names.addAll(lay.joins().keySet());
        return names.stream().distinct().toList();
    }

    /** A leg with the last chain that has hose on the way to an outlet changed. */
    private static Leg last(Leg leg, String outlet, UnaryOperator<Leg> change) {
        if (leg.outlets().stream().noneMatch(one -> one.id().equals(outlet))) {
            return leg;
        }
        List<Leg> legs = new ArrayList<>();
        boolean deeper = false;
        for (Leg next : leg.end().legs()) {
            boolean on = next.outlets().stream().anyMatch(one -> one.id().equals(outlet));
            deeper |= on && hasHose(next, outlet);
            legs.add(last(next, outlet, change));
        }
        if (deeper) {
            return new Leg(leg.runs(), leg.end().withLegs(legs), leg.gate(), leg.damage());
        }
        return leg.runs().isEmpty() ? leg : change.apply(leg);
    }

    private static boolean hasHose(Leg leg, String outlet) {
        return !leg.runs().isEmpty()
                || leg.end().legs().stream()
                        .filter(next ->
                                next.outlets().stream().anyMatch(one -> one.id().equals(outlet)))
                        .anyMatch(next -> hasHose(next, outlet));
    }
}
