package org.hosewright.files.kit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;

/** The reader of the packages of a kit file; every name in them must be one that the kit lists. */
final class PackageReader {
    private static final int MOST_CREW = 20;

    private PackageReader() {}

    static HosePackage read(String id, YamlMap map, Kit kit) {
        map.only("engine", "discharge", "hose", "nozzle", "setting", "crew", "target", "least", "ordered");
        String engineId = Names.get(map, "engine", kit.engines().keySet());
        Engine engine = Names.of(kit.engines(), engineId).engine();
        String nozzleId = Names.get(map, "nozzle", kit.nozzles().keySet());
        Nozzle nozzle = Names.of(kit.nozzles(), nozzleId).nozzle();
        String chain = "hose in laying order, as in '4 x attack-175' or '200 ft attack-175 + 100 ft leader-3'";
        List<Stretch> hose = map.get("hose", chain).read(chain, text -> Chain.parse(text, kit.hoses()));
        Optional<YamlValue> crew = map.find("crew");
        return new HosePackage(
                id,
                engineId,
                Names.get(map, "discharge", engine.discharges().keySet()),
                hose,
                nozzleId,
                Names.setting(map, nozzle),
                crew.isPresent()
                        ? OptionalInt.of(Quantities.whole(crew.get(), "people at the nozzle", 1, MOST_CREW))
                        : OptionalInt.empty(),
                map.find("target").map(Quantities::flow),
                least(map),
                map.find("ordered").map(Quantities::pressure));
    }

    private static Optional<Flow> least(YamlMap map) {
        Optional<Flow> least = map.find("least").map(Quantities::flow);
        Optional<Flow> target = map.find("target").map(Quantities::flow);
        if (least.isPresent()
                && target.isPresent()
                && least.get().cubicMetresPerSecond() > target.get().cubicMetresPerSecond()) {
            throw map.get("least", "").refused("least flow", "at most the target flow");
        }
        return least;
    }
}
