package org.hosewright.files.kit;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlReader;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.kit.RuleOfThumb;

/** The strict reader of a kit file. */
final class KitReader {
    private static final String[] KEYS = {
        "format",
        "company",
        "zone",
        "units",
        "crew",
        "hoses",
        "nozzles",
        "appliances",
        "engines",
        "instruments",
        "adapters",
        "packages",
        "rule",
        "reserve",
        "hydrant-test",
        "evidence"
    };
    private static final String FORMAT = "1, the format that this program reads";
    private static final int MOST_CREW = 20;

    private final YamlMap file;
    private final List<String> assumed = new ArrayList<>();

    private KitReader(YamlMap file) {
        this.file = file;
    }

    /** A kit with the defaults it rests on. */
    record Found(Kit kit, List<String> assumed) {}

    static Found read(String text, String source) {
        KitReader reader = new KitReader(YamlReader.read(text, source));
        return new Found(reader.kit(), List.copyOf(reader.assumed));
    }

    private Kit kit() {
        file.only(KEYS);
        YamlValue format = file.get("format", FORMAT);
        if (!format.text(FORMAT).equals("1")) {
            throw format.refused("format", FORMAT);
        }
        Kit bare = bare();
        EngineReader.checkGauges(file, bare);
        return whole(
                bare,
                section("packages", "a package", (id, value) -> PackageReader.read(id, value.map(), bare)),
                section("evidence", "a test night", (id, value) -> EvidenceReader.night(value.map(), bare)));
    }

    /** The kit without what names other things in it. */
    private Kit bare() {
        return new Kit(
                file.get("company", "the company's name").text("the company's name"),
                zone(file.get("zone", "a time zone such as America/New_York")),
                units(file.get("units", "us or si")),
                crew(),
                section("hoses", "a hose", EquipmentReader.hoses(assumed)),
                section("nozzles", "a nozzle", NozzleReader::nozzle),
                section("appliances", "an appliance", EquipmentReader.appliances(assumed)),
                section("engines", "an engine", EngineReader::engine),
                section("instruments", "an instrument", InstrumentReader::instrument),
                Map.of(),
                file.findMap("rule").map(KitReader::rule),
                file.find("reserve").map(KitReader::reserve),
                Map.of(),
                CouplingReader.of(file),
                file.find("hydrant-test").map(TestInterval::read));
    }

    private static Kit whole(Kit bare, Map<String, HosePackage> packages, Map<String, NightRecord> nights) {
        return new Kit(
                bare.company(),
                bare.zone(),
                bare.units(),
                bare.crewReaction(),
                bare.hoses(),
                bare.nozzles(),
                bare.appliances(),
                bare.engines(),
                bare.instruments(),
                packages,
                bare.rule(),
                bare.reserve(),
                nights,
                bare.couplings(),
                bare.hydrantTest());
    }

    private <T> Map<String, T> section(
            String key, String what, java.util.function.BiFunction<String, YamlValue, T> make) {
        return file.findMap(key).map(map -> map.byId(what, make)).orElse(Map.of());
    }

    private Map<Integer, Force> crew() {
        Map<Integer, Force> figures = new LinkedHashMap<>();
        Optional<YamlMap> crew = file.findMap("crew");
        crew.ifPresent(map -> map.only("reaction"));
        crew.flatMap(map -> map.findMap("reaction"))
                .ifPresent(map -> map.entries().forEach((people, value) -> {
                    if (!people.startsWith("x-")) {
                        figures.put(people(people, value), (Force) Quantities.positive(Kind.FORCE, value));
                    }
                }));
        return figures;
    }

    private static int people(String key, YamlValue value) {
        boolean number = key.matches("[1-9]|1[0-9]|" + MOST_CREW);
        if (!number) {
            String allowed = "1 to " + MOST_CREW + ", as in { 2: 75 lbf }";
            throw new org.hosewright.hydraulics.error.InvalidInput(
                    "people at the nozzle", key, allowed, value.place().text());
        }
        return Integer.parseInt(key);
    }

    private static String zone(YamlValue value) {
        String zone = value.text("a time zone such as America/New_York");
        if (!ZoneId.getAvailableZoneIds().contains(zone)) {
            throw value.refused("time zone", "one of the IANA list, such as America/New_York");
        }
        return zone;
    }

    private static UnitSystem units(YamlValue value) {
        String word = value.text("us or si");
        return Arrays.stream(UnitSystem.values())
                .filter(system -> system.word().equals(word))
                .findFirst()
                .orElseThrow(() -> value.refused("units", "us or si"));
    }

    private static Length reserve(YamlValue value) {
        Length reserve = Quantities.rise(value);
        if (reserve.metres() < 0) {
            throw value.refused("reserve", Kind.LENGTH.inWords() + ", 0 or more");
        }
        return reserve;
    }

    private static RuleOfThumb rule(YamlMap map) {
        map.only("tip", "per");
        var per = map.get("per", "a pressure for a length, as in '18 psi / 100 ft'");
        var loss = per.read("a pressure for a length, as in '18 psi / 100 ft'", QuantityText::lossByLength);
        return new RuleOfThumb(Quantities.pressure(map.get("tip", Kind.PRESSURE.inWords())), loss.loss(), loss.over());
    }
}
