package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.foam.Eductor;
import org.hosewright.hydraulics.foam.FoamMix;
import org.hosewright.hydraulics.foam.Proportioner;
import org.hosewright.hydraulics.lay.End;
import org.hosewright.hydraulics.lay.FloorOutlet;
import org.hosewright.hydraulics.lay.Leg;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** What hose ends in, made from the kit's pieces. */
final class Ends {
    private final Kit kit;
    private final TipNames names;
    private final Branches legs;
    private final List<String> assumed;

    Ends(Kit kit, TipNames names, Branches legs, List<String> assumed) {
        this.kit = kit;
        this.names = names;
        this.legs = legs;
        this.assumed = assumed;
    }

    End end(LayDocument.Leg leg, String path, OptionalInt people) {
        LaidEnd end = leg.end();
        if (end instanceof LaidEnd.Tip tip) {
            return outlet(tip, names.get(path), people);
        }
        if (end instanceof LaidEnd.Join join) {
            return new End.Join(join.name());
        }
        if (end instanceof LaidEnd.Wye wye) {
            return wye(wye, path, people);
        }
        if (end instanceof LaidEnd.Monitor monitor) {
            return monitor(monitor, path);
        }
        if (end instanceof LaidEnd.Standpipe pipe) {
            return standpipe(pipe, path, people);
        }
        return through(leg, path, people);
    }

    private End through(LayDocument.Leg leg, String path, OptionalInt people) {
        LaidEnd end = leg.end();
        if (end instanceof LaidEnd.Reducer reducer) {
            Leg next = legs.leg(reducer.leg(), path, people);
            return new End.Reducer("the reducing valve on " + path, reducer.holds(), next);
        }
        if (end instanceof LaidEnd.Eductor eductor) {
            Proportioner made = new Proportioner(
                    new Eductor(eductor.inlet(), eductor.flow()),
                    eductor.backPressure(),
                    new FoamMix(eductor.draws()),
                    eductor.concentrate());
            return new End.InlineEductor("the eductor on " + path, made, legs.leg(eductor.leg(), path, people));
        }
        if (end instanceof LaidEnd.Sprinklers heads) {
            double root = Math.sqrt(Pressure.ofPsi(1).pascals() / heads.at().pascals());
            Flow at1psi = new Flow(heads.k().cubicMetresPerSecond() * root);
            return End.Outlet.sprinklers(names.get(path), at1psi, heads.heads(), heads.shut());
        }
        Stretch last = leg.hose().get(leg.hose().size() - 1);
        return End.Outlet.hoseEnd(
                names.get(path), KitLines.hose(kit, last.hose()).diameter(), crew(people));
    }

    private End.Outlet outlet(LaidEnd.Tip tip, String name, OptionalInt people) {
        return new End.Outlet(
                name, KitLines.nozzle(kit, tip.nozzle(), tip.setting()), tip.setting(), tip.shut(), crew(people));
    }

    private End wye(LaidEnd.Wye wye, String path, OptionalInt people) {
        Optional<Appliance> appliance = appliance(wye.appliance(), wye.word(), path);
        List<Leg> next = new ArrayList<>();
        wye.legs().forEach((key, leg) -> next.add(legs.leg(leg, path + "/" + key, people)));
        return new End.Wye(appliance, next);
    }

    /** A monitor; it holds itself, so no crew's figure stands against its reaction. */
    private End monitor(LaidEnd.Monitor monitor, String path) {
        if (monitor.rise().isEmpty()) {
            assumed.add(
                    "No rise is stated for the monitor on " + path + ": its tip is taken level with its hose's end.");
        }
        List<End.Outlet> tips = new ArrayList<>();
        boolean only = monitor.tips().size() == 1;
        monitor.tips()
                .forEach((key, tip) ->
                        tips.add(outlet(tip, names.get(only ? path : path + "/" + key), OptionalInt.empty())));
        return new End.Monitor(
                appliance(monitor.appliance(), "monitor", path), monitor.rise().orElse(new Length(0)), tips);
    }

    private End standpipe(LaidEnd.Standpipe pipe, String path, OptionalInt people) {
        if (pipe.loss().isEmpty()) {
            assumed.add("The loss of the riser on " + path + " is not stated: none is taken.");
        }
        if (pipe.rise().isEmpty()) {
            assumed.add("No rise is stated for the standpipe on " + path + ": its foot is taken level.");
        }
        List<End.Floor> floors = new ArrayList<>();
        for (Map.Entry<String, LaidEnd.Outlet> entry : pipe.outlets().entrySet()) {
            LaidEnd.Outlet outlet = entry.getValue();
            String floor = path + "/" + entry.getKey();
            if (outlet.rise().isEmpty()) {
                assumed.add(
                        "No rise is stated for outlet " + entry.getKey() + ": it is taken at the foot of the floors.");
            }
            floors.add(new End.Floor(
                    entry.getKey(),
                    outlet.rise().orElse(new Length(0)),
                    valve(outlet.valve()),
                    legs.leg(outlet.leg(), floor, people)));
        }
        return new End.Standpipe(
                pipe.loss().orElse(PointLoss.NONE), pipe.rise().orElse(new Length(0)), floors, pipe.posted());
    }

    private static FloorOutlet valve(LaidEnd.Valve valve) {
        if (valve instanceof LaidEnd.Valve.FixedReducer fixed) {
            return new FloorOutlet.FixedReducer(fixed.holds());
        }
        if (valve instanceof LaidEnd.Valve.AdjustableReducer set) {
            return new FloorOutlet.AdjustableReducer(set.holds());
        }
        if (valve instanceof LaidEnd.Valve.Restrictor plate) {
            return new FloorOutlet.Restrictor(plate.loss());
        }
        return valve instanceof LaidEnd.Valve.Plain ? new FloorOutlet.Plain() : new FloorOutlet.Unknown();
    }

    private Optional<Appliance> appliance(Optional<String> named, String word, String path) {
        if (named.isEmpty()) {
            assumed.add("The " + word + " on " + path + " is not named: it is taken to lose nothing.");
        }
        return named.map(id -> KitLines.get(kit.appliances(), id, "appliance of " + path));
    }

    private Optional<Crew> crew(OptionalInt people) {
        return people.isPresent()
                ? Optional.ofNullable(kit.crewReaction().get(people.getAsInt()))
                        .map(figure -> new Crew(people.getAsInt(), figure))
                : Optional.empty();
    }
}
