package org.hosewright.files.kit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
        String engineId = named(map, "engine", kit.engines().keySet());
        Engine engine =
                java.util.Objects.requireNonNull(kit.engines().get(engineId)).engine();
        String nozzleId = named(map, "nozzle", kit.nozzles().keySet());
        Nozzle nozzle =
                java.util.Objects.requireNonNull(kit.nozzles().get(nozzleId)).nozzle();
        String chain = "hose in laying order, as in '4 x attack-175' or '200 ft attack-175 + 100 ft leader-3'";
        List<Stretch> hose = map.get("hose", chain).read(chain, text -> Chain.parse(text, kit.hoses()));
        Optional<YamlValue> crew = map.find("crew");
        return new HosePackage(
                id,
                engineId,
                named(map, "discharge", engine.discharges().keySet()),
                hose,
                nozzleId,
                setting(map, nozzle),
                crew.isPresent()
                        ? OptionalInt.of(Quantities.whole(crew.get(), "people at the nozzle", 1, MOST_CREW))
                        : OptionalInt.empty(),
                map.find("target").map(Quantities::flow),
                least(map),
                map.find("ordered").map(Quantities::pressure));
    }

    /** The value of a key that names something known. */
    static String named(YamlMap map, String key, Collection<String> known) {
        YamlValue value = map.get(key, Chain.known("", known));
        String name = value.text(Chain.known("", known));
        if (!known.contains(name)) {
            throw value.refused(key, Chain.known(name, known));
        }
        return name;
    }

    /** The setting of a nozzle; empty for a nozzle that has none. */
    static String setting(YamlMap map, Nozzle nozzle) {
        if (nozzle.hasSettings()) {
            return named(map, "setting", nozzle.settings().keySet());
        }
        map.find("setting").ifPresent(value -> {
            throw value.refused("setting", "no setting: " + nozzle.id() + " has only one");
        });
        return Nozzle.ONLY;
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
