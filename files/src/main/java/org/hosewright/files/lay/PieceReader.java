package org.hosewright.files.lay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.lay.LaidEnd.Outlet;
import org.hosewright.files.lay.LaidEnd.Valve;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.RatedPoint;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.Volume;

/** The reader of the pieces that hose leads through: standpipe, reducing valve, eductor, sprinklers. */
final class PieceReader {
    private static final String VALVE = "plain, { fixed-reducer: 90 psi }, { adjustable-reducer: 110 psi },"
            + " { restrictor: 15 psi @ 100 gpm } or unknown";
    private static final String K = "the flow of one head at 1 psi (gpm) or at 1 bar (L/min), as in '5.6 gpm'";
    private static final String RATED = "its rated flow and inlet pressure, as in '95 gpm @ 200 psi'";

    /** What an eductor bears behind it where nothing is stated. @source Firehouse: 65 % of the inlet pressure */
    private static final Ratio USUAL_BACK = new Ratio(0.65);

    private static final int MOST_HEADS = 1000;
    private static final Pressure BAR = Pressure.ofBar(1);

    private final LegReader legs;

    PieceReader(LegReader legs) {
        this.legs = legs;
    }

    LaidEnd of(String word, YamlMap map) {
        return switch (word) {
            case "standpipe" -> standpipe(map);
            case "pressure-reducer" -> new LaidEnd.Reducer(holds(map), legs.leg(map, "holds"));
            case "eductor" -> eductor(map);
            default -> sprinklers(map);
        };
    }

    static boolean isShut(YamlMap map) {
        return map.find("shut").map(PieceReader::truth).orElse(false);
    }

    private static boolean truth(YamlValue value) {
        String text = value.text("true or false");
        if (!text.equals("true") && !text.equals("false")) {
            throw value.refused("shut", "true or false");
        }
        return text.equals("true");
    }

    private static Pressure holds(YamlMap map) {
        return Quantities.pressure(map.get("holds", "the pressure that it holds behind it"));
    }

    private LaidEnd standpipe(YamlMap map) {
        map.only("rise", "loss", "outlets", "posted");
        YamlValue list = map.get("outlets", "the outlets in use, by name");
        Map<String, Outlet> outlets = list.map().byId("an outlet", (name, outlet) -> outlet(outlet.map()));
        if (outlets.isEmpty()) {
            throw list.refused("outlets", "at least one");
        }
        return new LaidEnd.Standpipe(
                map.find("rise").map(Quantities::rise),
                map.find("loss").map(loss -> Quantities.pointLoss(loss).value()),
                outlets,
                map.find("posted").map(Quantities::pressure));
    }

    /** An outlet; its rise is the outlet's height, so the hose from it is level unless a wye or a join says more. */
    private Outlet outlet(YamlMap map) {
        Leg leg = legs.leg(map, "outlet");
        Optional<Length> height = leg.rise();
        Leg level = new Leg(
                leg.where(), leg.hose(), Optional.of(new Length(0)), leg.crew(), leg.gate(), leg.damage(), leg.end());
        return new Outlet(height, valve(map.get("outlet", VALVE)), level);
    }

    private static Valve valve(YamlValue value) {
        if (!value.isMap()) {
            return switch (value.text(VALVE)) {
                case "plain" -> new Valve.Plain();
                case "unknown" -> new Valve.Unknown();
                default -> throw value.refused("outlet", VALVE);
            };
        }
        YamlMap map = value.map();
        map.only("fixed-reducer", "adjustable-reducer", "restrictor");
        List<String> words = map.entries().keySet().stream()
                .filter(key -> !key.startsWith("x-"))
                .toList();
        if (words.size() != 1) {
            throw value.refused("outlet", VALVE);
        }
        YamlValue set = map.get(words.get(0), VALVE);
        return switch (words.get(0)) {
            case "fixed-reducer" -> new Valve.FixedReducer(Quantities.pressure(set));
            case "adjustable-reducer" -> new Valve.AdjustableReducer(Quantities.pressure(set));
            default -> new Valve.Restrictor(Quantities.pointLoss(set).value());
        };
    }

    private LaidEnd eductor(YamlMap map) {
        YamlValue at = map.get("rated", RATED);
        RatedPoint rated = at.read(RATED, QuantityText::ratedPoint);
        Leg leg = legs.leg(map, "rated", "back-pressure", "draws", "concentrate");
        return new LaidEnd.Eductor(
                rated.flow(),
                rated.at(),
                share(map, "back-pressure").orElse(USUAL_BACK),
                share(map, "draws")
                        .orElseThrow(() -> at.refused("draws is missing beside rated", "as in 'draws: 3 %'")),
                map.find("concentrate").map(value -> (Volume) Quantities.positive(Kind.VOLUME, value)),
                leg);
    }

    private static Optional<Ratio> share(YamlMap map, String key) {
        return map.find(key).map(value -> {
            Ratio share = (Ratio) Quantities.positive(Kind.RATIO, value);
            if (share.value() >= 1) {
                throw value.refused(key, "a share below 100 %");
            }
            return share;
        });
    }

    private static LaidEnd sprinklers(YamlMap map) {
        map.only("k", "heads", "shut");
        YamlValue value = map.get("k", K);
        String text = value.text(K);
        RatedPoint rated = text.contains("@")
                ? value.read(K, QuantityText::ratedPoint)
                : new RatedPoint(Quantities.flow(value), text.endsWith("gpm") ? Pressure.ofPsi(1) : BAR);
        int heads = map.find("heads")
                .map(count -> Quantities.whole(count, "heads", 1, MOST_HEADS))
                .orElse(1);
        return new LaidEnd.Sprinklers(rated.flow(), rated.at(), heads, isShut(map));
    }
}
