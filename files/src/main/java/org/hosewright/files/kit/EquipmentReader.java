package org.hosewright.files.kit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import org.hosewright.files.term.CouplingText;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HoseRecord;

/** The reader of the hoses and the appliances of a kit file. */
final class EquipmentReader {
    private static final Length THINNEST = Length.ofInches(0.5);
    private static final Length WIDEST = Length.ofInches(12);
    private static final String DIAMETERS = "a diameter from 1/2 in to 12 in, or 12 mm to 300 mm";
    private static final Length SHORTEST = Length.ofFeet(5);
    private static final Length LONGEST = Length.ofFeet(1000);
    private static final String SECTIONS = "a length from coupling to coupling, 5 to 1000 ft or 2 to 300 m";
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2100;
    private static final String[] HOSE_KEYS = {
        "diameter",
        "section",
        "loss",
        "hazen-williams",
        "roughness",
        "basis",
        "service-test",
        "tested",
        "made",
        "coupling",
        "type"
    };
    private static final String TYPES = "a name such as attack-175, the same for all batches of one type";
    private static final String PER = "leg (loss at that leg's flow) or total (at the sum)";

    private EquipmentReader() {}

    static BiFunction<String, YamlValue, HoseRecord> hoses(List<String> assumed) {
        return (id, value) -> hose(id, value.map(), assumed);
    }

    static BiFunction<String, YamlValue, Appliance> appliances(List<String> assumed) {
        return (id, value) -> appliance(id, value.map(), assumed);
    }

    /** A diameter of something that water goes through. */
    static Length diameter(YamlValue value) {
        return Quantities.length(value, THINNEST, WIDEST, DIAMETERS);
    }

    static Basis basis(YamlValue value) {
        String allowed = "book, maker, estimate, or 'test' with the name of the test night";
        String text = value.text(allowed);
        if (text.matches("test [a-z][a-z0-9-]{0,39}")) {
            return new Basis(Basis.Kind.TEST, text.substring("test ".length()));
        }
        return Arrays.stream(Basis.Kind.values())
                .filter(kind -> kind != Basis.Kind.TEST && kind.word().equals(text))
                .findFirst()
                .map(kind -> new Basis(kind, ""))
                .orElseThrow(() -> value.refused("basis", allowed));
    }

    private static HoseRecord hose(String id, YamlMap map, List<String> assumed) {
        map.only(HOSE_KEYS);
        Hose hose = HoseLossReader.hose(
                id,
                map,
                diameter(map.get("diameter", DIAMETERS)),
                Quantities.length(map.get("section", SECTIONS), SHORTEST, LONGEST, SECTIONS));
        Optional<Basis> basis = map.find("basis").map(EquipmentReader::basis);
        if (basis.isEmpty()) {
            assumed.add("The loss of hose " + id + " names no basis; it is taken as an estimate.");
        }
        var made = map.find("made");
        return new HoseRecord(
                hose,
                basis.orElse(new Basis(Basis.Kind.ESTIMATE, "")),
                map.find("tested").map(Quantities::day),
                made.isPresent()
                        ? OptionalInt.of(Quantities.whole(made.get(), "year", FIRST_YEAR, LAST_YEAR))
                        : OptionalInt.empty(),
                map.find("coupling").map(CouplingText::read),
                map.find("type").map(EquipmentReader::type));
    }

    private static String type(YamlValue value) {
        String text = value.text(TYPES);
        if (!text.matches("[a-z][a-z0-9-]{0,39}")) {
            throw value.refused("type of hose", TYPES);
        }
        return text;
    }

    private static Appliance appliance(String id, YamlMap map, List<String> assumed) {
        map.only("loss", "per", "rated", CouplingReader.IN, CouplingReader.OUT);
        String forms = "'0.55 psi @ 100 gpm', or { rule: 10 psi, from: 350 gpm }";
        ApplianceLoss loss = loss(map.get("loss", forms));
        Optional<Appliance.Per> per = map.find("per").map(EquipmentReader::per);
        if (per.isEmpty()) {
            assumed.add("Appliance " + id + " does not say per leg or total; its loss is taken at the total flow.");
        }
        return new Appliance(
                id, loss, per.orElse(Appliance.Per.TOTAL), map.find("rated").map(Quantities::pressure));
    }

    private static ApplianceLoss loss(YamlValue value) {
        if (!value.isMap()) {
            return new ApplianceLoss.Quadratic(Quantities.pointLoss(value));
        }
        YamlMap map = value.map();
        map.only("rule", "from");
        return new ApplianceLoss.Rule(
                Quantities.pressure(map.get("rule", Kind.PRESSURE.inWords())),
                Quantities.flow(map.get("from", Kind.FLOW.inWords())));
    }

    private static Appliance.Per per(YamlValue value) {
        return switch (value.text(PER)) {
            case "leg" -> Appliance.Per.LEG;
            case "total" -> Appliance.Per.TOTAL;
            default -> throw value.refused("per", PER);
        };
    }
}
