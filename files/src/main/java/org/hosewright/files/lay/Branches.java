package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.files.lay.LayDocument.LaidLine;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.End;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.Leg;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.Laid;
import org.hosewright.ledger.lay.LaidSupply;
import org.hosewright.ledger.line.KitLines;

/** A lay file's lines and wyes, made from the kit's pieces. */
final class Branches {
    private static final String SOLVED = "lines, wyes and nozzles";

    private final Kit kit;
    private final TipNames names;
    private final List<String> assumed = new ArrayList<>();

    private Branches(Kit kit, TipNames names) {
        this.kit = kit;
        this.names = names;
    }

    static Laid of(LayDocument lay, Kit kit, String source) {
        Branches reader = new Branches(kit, TipNames.of(lay));
        lay.pump().ifPresent(pump -> {
            throw new InvalidInput("pump of the lay, which is not solved here,", "pump", "no such key", source);
        });
        Engine engine = KitLines.get(kit.engines(), lay.engine(), "engine").engine();
        List<Lay.FromDischarge> lines = new ArrayList<>();
        for (LaidLine line : lay.lines()) {
            Leg leg = reader.leg(line.leg(), line.discharge(), line.leg().crew());
            lines.add(new Lay.FromDischarge(engine.getDischarge(line.discharge()), leg));
            if (engine.getDischarge(line.discharge()).loss().isEmpty()) {
                reader.assumed.add("The loss of the piping of " + line.discharge() + " is not known: none is taken.");
            }
        }
        Optional<LaidSupply> supply = lay.supply().flatMap(Supplies::of);
        try {
            return new Laid(
                    lay.engine(), new Lay(lines), supply, lay.ask(), Supplies.leftOut(lay.supply()), reader.assumed);
        } catch (InvalidInput e) {
            throw e.at(source);
        }
    }

    private Leg leg(LayDocument.Leg leg, String path, OptionalInt crew) {
        if (leg.hose().isEmpty()) {
            throw new InvalidInput("hose of " + path, "", "hose in laying order", leg.where());
        }
        leg.gate().ifPresent(gate -> {
            throw notSolved("a gate", "gate", leg);
        });
        leg.damage().ifPresent(damage -> {
            throw notSolved("damage", "damage", leg);
        });
        if (leg.rise().isEmpty()) {
            assumed.add("No rise is stated for " + path + ": its hose is taken level.");
        }
        OptionalInt people = leg.crew().isPresent() ? leg.crew() : crew;
        return new Leg(runs(leg.hose(), leg.rise().orElse(new Length(0))), end(leg, path, people));
    }

    /** The chain; a rise stands in its last hose and a fall in its first, so that each is checked at the most it sees. */
    private List<Run> runs(List<Stretch> chain, Length rise) {
        List<Run> runs = new ArrayList<>(KitLines.runs(kit, chain, new Length(0)));
        int steep = rise.metres() < 0 ? 0 : runs.size() - 1;
        runs.set(steep, runs.get(steep).withRise(rise));
        return runs;
    }

    private End end(LayDocument.Leg leg, String path, OptionalInt people) {
        LaidEnd end = leg.end();
        if (end instanceof LaidEnd.Tip tip) {
            return new End.Outlet(
                    names.get(path),
                    KitLines.nozzle(kit, tip.nozzle(), tip.setting()),
                    tip.setting(),
                    tip.shut(),
                    crew(people));
        }
        if (end instanceof LaidEnd.Wye wye) {
            return wye(wye, path, people);
        }
        if (end instanceof LaidEnd.Join join) {
            throw notSolved("a join", join.name(), leg);
        }
        throw notSolved("a piece", end.word(), leg);
    }

    private static InvalidInput notSolved(String what, String word, LayDocument.Leg leg) {
        return new InvalidInput(what + " in the lay, which is not solved here,", word, SOLVED, leg.where());
    }

    private End wye(LaidEnd.Wye wye, String path, OptionalInt people) {
        Optional<Appliance> appliance =
                wye.appliance().map(id -> KitLines.get(kit.appliances(), id, "appliance of " + path));
        if (appliance.isEmpty()) {
            assumed.add("The " + wye.word() + " on " + path + " is not named: it is taken to lose nothing.");
        }
        Map<String, Leg> legs = new LinkedHashMap<>();
        wye.legs().forEach((key, leg) -> legs.put(key, leg(leg, path + "/" + key, people)));
        return new End.Wye(appliance, List.copyOf(legs.values()));
    }

    private Optional<Crew> crew(OptionalInt people) {
        return people.isPresent()
                ? Optional.ofNullable(kit.crewReaction().get(people.getAsInt()))
                        .map(figure -> new Crew(people.getAsInt(), figure))
                : Optional.empty();
    }
}
