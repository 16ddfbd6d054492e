package org.hosewright.ledger.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;

/** Turns the kit's names into lines that can be solved. */
public final class KitLines {
    private KitLines() {}

    /** A package's line, all its rise in the last hose.
     *
     * @throws InvalidInput the package names something the kit does not have
     */
    public static Line of(Kit kit, HosePackage named, Length rise) {
        EngineRecord engine = get(kit.engines(), named.engine(), "engine of package " + named.id());
        return new Line(
                engine.engine().getDischarge(named.discharge()),
                runs(kit, named.hose(), rise),
                nozzle(kit, named.nozzle(), named.setting()),
                named.setting());
    }

    /** A chain of hoses, the whole rise in the last one. */
    public static List<Run> runs(Kit kit, List<Stretch> chain, Length rise) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < chain.size(); i++) {
            Stretch part = chain.get(i);
            Length up = i == chain.size() - 1 ? rise : new Length(0);
            runs.add(new Run(hose(kit, part.hose()), part.length(), up));
        }
        return runs;
    }

    public static Hose hose(Kit kit, String id) {
        HoseRecord record = get(kit.hoses(), id, "hose");
        return record.hose();
    }

    /** The nozzle of a name in a setting, with what the last night believed of that tip's flow where it has no factor itself.
     *
     * <p>A factor found on one setting says nothing about another.
     */
    public static Nozzle nozzle(Kit kit, String id, String setting) {
        Nozzle nozzle = get(kit.nozzles(), id, "nozzle").nozzle();
        if (nozzle.flow().isPresent()) {
            return nozzle;
        }
        Optional<Known<Ratio>> believed = kit.evidence().values().stream()
                .map(night -> night.flow().get(nozzle.tipName(setting)))
                .filter(Objects::nonNull)
                .reduce((earlier, later) -> later);
        return new Nozzle(id, nozzle.settings(), nozzle.most(), believed);
    }

    /** The entry of a name.
     *
     * @throws InvalidInput there is none of that name
     */
    public static <T> T get(Map<String, T> map, String id, String what) {
        T found = map.get(id);
        if (found == null) {
            throw new InvalidInput(what, id, "one of " + String.join(", ", map.keySet()), "");
        }
        return found;
    }
}
