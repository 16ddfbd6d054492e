package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.files.lay.LayDocument.LaidLine;
import org.hosewright.files.lay.LayDocument.Pumping;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Damage;
import org.hosewright.hydraulics.lay.HalfGate;
import org.hosewright.hydraulics.lay.Joint;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.Leg;
import org.hosewright.hydraulics.lay.PumpMode;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.Laid;
import org.hosewright.ledger.line.KitLines;

/** A lay file's lines, joins and legs, made from the kit's pieces. */
final class Branches {
    private final Kit kit;
    private final Ends ends;
    private final List<String> assumed = new ArrayList<>();

    private Branches(Kit kit, TipNames names) {
        this.kit = kit;
        this.ends = new Ends(kit, names, this, assumed);
    }

    static Laid of(LayDocument lay, Kit kit, String source) {
        Branches reader = new Branches(kit, TipNames.of(lay));
        reader.assumed.addAll(Mating.check(lay, kit));
        Engine engine = KitLines.get(kit.engines(), lay.engine(), "engine").engine();
        List<Lay.FromDischarge> lines = reader.lines(lay, engine);
        Map<String, Joint> joins = reader.joins(lay);
        Supplies supplies = new Supplies(kit, reader.assumed);
        try {
            Lay laid = new Lay(lines, joins, lay.supply().flatMap(supplies::of), pump(lay, engine, source));
            return new Laid(lay.engine(), laid, lay.ask(), supplies.cautions(), supplies.tests(), reader.assumed);
        } catch (InvalidInput e) {
            throw e.where().isEmpty() ? e.at(source) : e;
        }
    }

    private List<Lay.FromDischarge> lines(LayDocument lay, Engine engine) {
        List<Lay.FromDischarge> lines = new ArrayList<>();
        for (LaidLine line : lay.lines()) {
            requireHose(line.leg(), line.discharge());
            Leg leg = leg(line.leg(), line.discharge(), line.leg().crew());
            Discharge discharge = engine.getDischarge(line.discharge());
            lines.add(new Lay.FromDischarge(discharge, leg));
            if (discharge.loss().isEmpty()) {
                assumed.add(LossErrors.sayUnknown(discharge));
            }
        }
        return lines;
    }

    private Map<String, Joint> joins(LayDocument lay) {
        Map<String, Joint> joins = new LinkedHashMap<>();
        lay.joins().forEach((name, joint) -> {
            if (joint.appliance().isEmpty()) {
                assumed.add("The siamese at " + name + " is not named: it is taken to lose nothing.");
            }
            joins.put(
                    name,
                    new Joint(
                            joint.appliance().map(id -> KitLines.get(kit.appliances(), id, "appliance of " + name)),
                            leg(joint.leg(), name, joint.leg().crew())));
        });
        return joins;
    }

    private static PumpMode pump(LayDocument lay, Engine engine, String source) {
        if (lay.pump().isEmpty()) {
            return new PumpMode.Governor();
        }
        if (lay.pump().get() instanceof Pumping.Holds holds) {
            if (lay.ask() instanceof Ask.AtPump asked && asked.pressure().equals(holds.pressure())) {
                return new PumpMode.Governor();
            }
            throw new InvalidInput(
                    "what is asked of a pump that holds a pressure",
                    "another question",
                    "ask: { pump: … } with that pressure, or no holds",
                    source);
        }
        Pumping.FixedSpeed fixed = (Pumping.FixedSpeed) lay.pump().get();
        return new PumpMode.FixedSpeed(
                fixed.at(),
                fixed.flow(),
                engine.rated()
                        .orElseThrow(() -> new InvalidInput(
                                "rated capacity of " + engine.id(),
                                "",
                                "its pump's rated flow in the kit, for a pump at fixed speed",
                                source)));
    }

    /** The leg, made from what the file says of it. */
    Leg leg(LayDocument.Leg leg, String path, OptionalInt crew) {
        if (leg.end() instanceof LaidEnd.HoseEnd) {
            requireHose(leg, path);
        }
        if (leg.rise().isEmpty() && !leg.hose().isEmpty()) {
            assumed.add("No rise is stated for " + path + ": its hose is taken level.");
        }
        OptionalInt people = leg.crew().isPresent() ? leg.crew() : crew;
        List<Run> runs = runs(leg.hose(), leg.rise().orElse(new Length(0)));
        try {
            return new Leg(runs, ends.end(leg, path, people), gate(leg, path, runs), damage(leg));
        } catch (InvalidInput e) {
            throw e.where().isEmpty() ? e.at(leg.where()) : e;
        }
    }

    private static void requireHose(LayDocument.Leg leg, String path) {
        if (leg.hose().isEmpty()) {
            throw new InvalidInput("hose of " + path, "", "hose in laying order", leg.where());
        }
    }

    private Optional<PointLoss> gate(LayDocument.Leg leg, String path, List<Run> runs) {
        if (leg.gate().isEmpty()) {
            return Optional.empty();
        }
        if (leg.gate().get() instanceof LayDocument.Gate.Takes takes) {
            return Optional.of(takes.loss());
        }
        if (runs.isEmpty()) {
            throw new InvalidInput("a half-shut gate", "half", "what it takes, as in '12 psi @ 100 gpm'", leg.where());
        }
        assumed.add(
                "What the half-shut gate to " + path + " takes is an estimate for a ball valve of its hose's size.");
        return Optional.of(HalfGate.of(runs.get(0).hose().diameter()));
    }

    private static Optional<Damage> damage(LayDocument.Leg leg) {
        return leg.damage()
                .map(damage -> damage instanceof LayDocument.Damage.Kink kink
                        ? new Damage.Kink(kink.loss())
                        : new Damage.Burst(((LayDocument.Damage.Burst) damage).coupling()));
    }

    /** The chain; a rise stands in its last hose and a fall in its first, so that each is checked at the most it sees. */
    private List<Run> runs(List<Stretch> chain, Length rise) {
        List<Run> runs = new ArrayList<>(KitLines.runs(kit, chain, new Length(0)));
        runs.stream().map(LossErrors::sayLaw).flatMap(Optional::stream).forEach(assumed::add);
        if (!runs.isEmpty()) {
            int steep = rise.metres() < 0 ? 0 : runs.size() - 1;
            runs.set(steep, runs.get(steep).withRise(rise));
        }
        return runs;
    }
}
