package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.files.kit.Chain;
import org.hosewright.files.lay.LayDocument.Damage;
import org.hosewright.files.lay.LayDocument.Gate;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.ledger.kit.Kit;

/** The reader of a leg: a chain of hose, what is done to it, and what it ends in. */
final class LegReader {
    private static final List<String> KEYS = List.of("hose", "rise", "crew", "gate", "damage", "setting", "shut");
    private static final String CHAIN = "hose in laying order, as in '4 x attack-175' or '200 ft attack-175'";
    private static final String GATE = "half, or what it takes, as in '12 psi @ 100 gpm'";
    private static final String DAMAGE = "{ burst: 3 } or { kink: 10 psi @ 100 gpm }";
    private static final int MOST_CREW = 20;

    private final Kit kit;
    private final EndReader ends;

    LegReader(Kit kit) {
        this.kit = kit;
        this.ends = new EndReader(kit, this);
    }

    /** The leg in a map that may hold some keys beside it. */
    Leg leg(YamlMap map, String... beside) {
        List<String> known = new ArrayList<>(List.of(beside));
        known.addAll(KEYS);
        known.addAll(EndReader.WORDS);
        map.only(known.toArray(String[]::new));
        LaidEnd end = ends.end(map);
        Optional<YamlValue> crew = map.find("crew");
        return new Leg(
                map.place().text(),
                chain(map),
                map.find("rise").map(Quantities::rise),
                crew.isPresent()
                        ? OptionalInt.of(Quantities.whole(crew.get(), "people at the nozzle", 1, MOST_CREW))
                        : OptionalInt.empty(),
                map.find("gate").map(LegReader::gate),
                map.find("damage").map(LegReader::damage),
                end);
    }

    /** The hose of a leg; empty where none is named. */
    private List<Stretch> chain(YamlMap map) {
        return map.find("hose")
                .map(hose -> hose.read(CHAIN, text -> Chain.parse(text, kit.hoses())))
                .orElse(List.of());
    }

    private static Gate gate(YamlValue value) {
        String text = value.text(GATE);
        if (text.equals("half")) {
            return new Gate.Half();
        }
        if (!text.contains("@")) {
            throw value.refused("gate", GATE);
        }
        return new Gate.Takes(Quantities.pointLoss(value).value());
    }

    private static Damage damage(YamlValue value) {
        YamlMap map = value.map();
        map.only("burst", "kink");
        if (map.find("burst").isPresent() == map.find("kink").isPresent()) {
            throw value.refused("damage", DAMAGE);
        }
        return map.find("burst")
                .<Damage>map(at -> new Damage.Burst(Quantities.whole(at, "coupling", 0, Chain.MOST_SECTIONS)))
                .orElseGet(() -> new Damage.Kink(
                        Quantities.pointLoss(map.get("kink", DAMAGE)).value()));
    }

    Optional<String> appliance(YamlMap map) {
        return map.find("appliance")
                .map(value -> Names.get(map, "appliance", kit.appliances().keySet()));
    }
}
