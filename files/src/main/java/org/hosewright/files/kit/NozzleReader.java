package org.hosewright.files.kit;

import java.util.Map;
import java.util.Optional;
import org.hosewright.files.term.CouplingText;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.RatedPoint;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.ledger.kit.NozzleRecord;

/** The reader of the nozzles of a kit file. */
final class NozzleReader {
    /** The setting that marks a static reading, so no nozzle may have one of that name. */
    static final String SHUT = "shut";

    private static final String KINDS = "smooth-bore, fog, automatic, selectable or break-apart";
    private static final String TIP_KINDS = "smooth-bore, fog or automatic";
    private static final String BORES = "a bore from 1/8 in to 6 in, or 3 mm to 150 mm";
    private static final Length SMALLEST = Length.ofInches(0.118);
    private static final Length LARGEST = Length.ofInches(6);
    private static final double MOST_FACTOR = 2;
    private static final double LEAST_FACTOR = 0.5;

    private NozzleReader() {}

    static NozzleRecord nozzle(String id, YamlValue value) {
        YamlMap map = value.map();
        YamlValue kind = map.get("kind", KINDS);
        Map<String, Tip> settings = switch (kind.text(KINDS)) {
            case "smooth-bore", "fog", "automatic" -> Map.of(Nozzle.ONLY, tip(map, true));
            case "selectable", "break-apart" -> settings(map);
            default -> throw kind.refused("kind of nozzle", KINDS);
        };
        Nozzle nozzle = new Nozzle(
                id,
                settings,
                map.find("most").map(Quantities::pressure),
                map.find("flow").map(NozzleReader::factor));
        return new NozzleRecord(
                nozzle,
                map.find("gauged").map(Quantities::day),
                map.find("coupling").map(CouplingText::read));
    }

    private static Map<String, Tip> settings(YamlMap map) {
        map.only("kind", "settings", "most", "flow", "gauged", "coupling");
        YamlValue settings = map.get("settings", "a tip for each setting, by name");
        Map<String, Tip> tips = settings.map().byId("a setting", (name, value) -> {
            if (name.equals(SHUT)) {
                throw new InvalidInput(
                        "a setting's name",
                        name,
                        "another name: it marks a static reading",
                        value.place().text());
            }
            return tip(value.map(), false);
        });
        if (tips.isEmpty()) {
            throw settings.refused("settings", "at least one tip, by name");
        }
        return tips;
    }

    private static Tip tip(YamlMap map, boolean whole) {
        YamlValue kind = map.get("kind", TIP_KINDS);
        return switch (kind.text(TIP_KINDS)) {
            case "smooth-bore" -> smoothBore(map, whole);
            case "fog" -> fog(map, whole);
            case "automatic" -> automatic(map, whole);
            default -> throw kind.refused("kind of tip", TIP_KINDS);
        };
    }

    private static Tip smoothBore(YamlMap map, boolean whole) {
        only(map, whole, "kind", "bore", "at");
        return new SmoothBore(
                Quantities.length(map.get("bore", BORES), SMALLEST, LARGEST, BORES),
                Quantities.pressure(map.get("at", "its working pressure: " + Kind.PRESSURE.inWords())));
    }

    private static Tip fog(YamlMap map, boolean whole) {
        only(map, whole, "kind", "rated");
        String allowed = "a flow at a pressure, as in '150 gpm @ 75 psi'";
        RatedPoint point = map.get("rated", allowed).read(allowed, QuantityText::ratedPoint);
        return new Fog(point.flow(), point.at());
    }

    private static Tip automatic(YamlMap map, boolean whole) {
        only(map, whole, "kind", "holds", "from", "to");
        YamlValue to = map.get("to", Kind.FLOW.inWords());
        var holds = Quantities.pressure(map.get("holds", Kind.PRESSURE.inWords()));
        var from = Quantities.flow(map.get("from", Kind.FLOW.inWords()));
        var highest = Quantities.flow(to);
        return to.placed(() -> new Automatic(holds, from, highest));
    }

    private static void only(YamlMap map, boolean whole, String... own) {
        if (!whole) {
            map.only(own);
            return;
        }
        String[] all = java.util.Arrays.copyOf(own, own.length + 4);
        all[own.length] = "most";
        all[own.length + 1] = "flow";
        all[own.length + 2] = "gauged";
        all[own.length + 3] = "coupling";
        map.only(all);
    }

    static Known<Ratio> factor(YamlValue value) {
        String allowed = "the true flow as a share of the rated one, as in '102 ± 1.5 %'";
        var read = value.read(allowed, text -> QuantityText.known(Kind.RATIO, text));
        Ratio share = (Ratio) read.value();
        if (share.value() < LEAST_FACTOR || share.value() > MOST_FACTOR) {
            throw value.refused("flow factor", allowed + ", 50 to 200 %");
        }
        Optional<Ratio> error = read.standardError().map(e -> (Ratio) e);
        return new Known<>(share, error);
    }
}
