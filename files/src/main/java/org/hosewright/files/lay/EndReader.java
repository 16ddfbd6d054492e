package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;

/** The reader of what a chain of hose ends in. */
final class EndReader {
    /** The words of the ends, in the order in which an error lists them. */
    static final List<String> WORDS = List.of(
            "nozzle",
            "wye",
            "manifold",
            "join",
            "monitor",
            "standpipe",
            "pressure-reducer",
            "eductor",
            "sprinklers",
            "hose-end");

    private static final String END = "one of " + String.join(", ", WORDS);

    private final Kit kit;
    private final LegReader legs;
    private final PieceReader pieces;

    EndReader(Kit kit, LegReader legs) {
        this.kit = kit;
        this.legs = legs;
        this.pieces = new PieceReader(legs);
    }

    /** The one end that a map holds. */
    LaidEnd end(YamlMap map) {
        List<String> found = new ArrayList<>();
        for (String word : map.entries().keySet()) {
            if (WORDS.contains(word)) {
                found.add(word);
            }
        }
        if (found.size() != 1) {
            String value = String.join(" and ", found);
            throw new InvalidInput(
                    "the end of the hose", value, END, map.place().text());
        }
        String word = found.get(0);
        if (!word.equals("nozzle")) {
            refuseBeside(map);
        }
        return word.equals("nozzle") ? tip(map) : of(word, map.get(word, END));
    }

    private LaidEnd of(String word, YamlValue value) {
        return switch (word) {
            case "wye", "manifold" -> wye(word, value.map());
            case "join" -> new LaidEnd.Join(value.text("the name of a join"));
            case "monitor" -> monitor(value.map());
            case "hose-end" -> hoseEnd(value);
            default -> pieces.of(word, value.map());
        };
    }

    private static void refuseBeside(YamlMap map) {
        for (String key : List.of("setting", "shut")) {
            map.find(key).ifPresent(value -> {
                throw value.refused(key + " without a nozzle", "a nozzle beside it");
            });
        }
    }

    private LaidEnd.Tip tip(YamlMap map) {
        String id = Names.get(map, "nozzle", kit.nozzles().keySet());
        Nozzle nozzle = Names.of(kit.nozzles(), id).nozzle();
        return new LaidEnd.Tip(id, Names.setting(map, nozzle), PieceReader.isShut(map));
    }

    private LaidEnd wye(String word, YamlMap map) {
        map.only("appliance", "legs");
        YamlValue list = map.get("legs", "at least two legs, by name");
        Map<String, Leg> byName = list.map().byId("a leg", (name, leg) -> legs.leg(leg.map()));
        if (byName.size() < 2) {
            throw list.refused("legs of a " + word, "at least two");
        }
        return new LaidEnd.Wye(word, legs.appliance(map), byName);
    }

    private LaidEnd monitor(YamlMap map) {
        map.only("appliance", "rise", "nozzle", "setting", "shut", "tips");
        Optional<YamlValue> several = map.find("tips");
        if (several.isPresent() == map.find("nozzle").isPresent()) {
            String found = several.isPresent() ? "nozzle and tips" : "";
            throw new InvalidInput(
                    "the tip of the monitor",
                    found,
                    "a nozzle, or tips by name",
                    map.place().text());
        }
        Map<String, LaidEnd.Tip> tips = several.map(list -> list.map().byId("a tip", (name, tip) -> {
                    tip.map().only("nozzle", "setting", "shut");
                    return tip(tip.map());
                }))
                .orElseGet(() -> Map.of("tip", tip(map)));
        return new LaidEnd.Monitor(legs.appliance(map), map.find("rise").map(Quantities::rise), tips);
    }

    private static LaidEnd hoseEnd(YamlValue value) {
        if (!value.text("true").equals("true")) {
            throw value.refused("hose-end", "true: the hose ends in an open butt");
        }
        return new LaidEnd.HoseEnd();
    }
}
