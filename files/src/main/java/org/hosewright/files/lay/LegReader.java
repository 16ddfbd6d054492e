package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.files.kit.Chain;
import org.hosewright.files.lay.LayDocument.End;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;

/** The reader of a leg: a chain of hose and what it ends in. */
final class LegReader {
    private static final List<String> PIECES = List.of("standpipe", "monitor", "pressure-reducer", "relay");
    private static final List<String> ENDS = List.of("nozzle", "wye", "join");
    private static final String END = "one of nozzle, wye, join, " + String.join(", ", PIECES);
    private static final String CHAIN = "hose in laying order, as in '4 x attack-175' or '200 ft attack-175'";
    private static final int MOST_CREW = 20;

    private final Kit kit;

    LegReader(Kit kit) {
        this.kit = kit;
    }

    /** The leg in a map that may hold some keys beside it. */
    Leg leg(YamlMap map, String... beside) {
        List<String> known = new ArrayList<>(List.of(beside));
        known.addAll(List.of("hose", "rise", "crew", "setting", "shut"));
        known.addAll(ENDS);
        known.addAll(PIECES);
        map.only(known.toArray(String[]::new));
        End end = end(map);
        Optional<YamlValue> crew = map.find("crew");
        return new Leg(
                chain(map),
                map.find("rise").map(Quantities::rise),
                crew.isPresent()
                        ? OptionalInt.of(Quantities.whole(crew.get(), "people at the nozzle", 1, MOST_CREW))
                        : OptionalInt.empty(),
                end);
    }

    /** The hose of a leg or a supply; empty where none is named. */
    List<Stretch> chain(YamlMap map) {
        return map.find("hose")
                .map(hose -> hose.read(CHAIN, text -> Chain.parse(text, kit.hoses())))
                .orElse(List.of());
    }

    private End end(YamlMap map) {
        List<String> found = new ArrayList<>();
        for (String word : map.entries().keySet()) {
            if (ENDS.contains(word) || PIECES.contains(word)) {
                found.add(word);
            }
        }
        if (found.size() != 1) {
            String value = String.join(" and ", found);
            throw new InvalidInput(
                    "the end of the hose", value, END, map.place().text());
        }
        if (!found.get(0).equals("nozzle")) {
            for (String key : List.of("setting", "shut")) {
                map.find(key).ifPresent(value -> {
                    throw value.refused(key + " without a nozzle", "a nozzle beside it");
                });
            }
        }
        return switch (found.get(0)) {
            case "nozzle" -> tip(map);
            case "wye" -> wye(map.get("wye", END).map());
            case "join" -> new End.Join(map.get("join", END).text("the name of a join"));
            default -> new End.Piece(found.get(0));
        };
    }

    private End tip(YamlMap map) {
        String id = Names.get(map, "nozzle", kit.nozzles().keySet());
        Nozzle nozzle = Names.of(kit.nozzles(), id).nozzle();
        return new End.Tip(
                id,
                Names.setting(map, nozzle),
                map.find("shut").map(LegReader::truth).orElse(false));
    }

    private End wye(YamlMap map) {
        map.only("appliance", "legs");
        YamlValue legs = map.get("legs", "at least two legs, by name");
        Map<String, Leg> byName = legs.map().byId("a leg", (name, leg) -> leg(leg.map()));
        if (byName.size() < 2) {
            throw legs.refused("legs of a wye", "at least two");
        }
        return new End.Wye(appliance(map), byName);
    }

    Optional<String> appliance(YamlMap map) {
        return map.find("appliance")
                .map(value -> Names.get(map, "appliance", kit.appliances().keySet()));
    }

    private static boolean truth(YamlValue value) {
        String text = value.text("true or false");
        if (!text.equals("true") && !text.equals("false")) {
            throw value.refused("shut", "true or false");
        }
        return text.equals("true");
    }
}
