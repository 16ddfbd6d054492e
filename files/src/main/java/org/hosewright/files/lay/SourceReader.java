package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.files.kit.Chain;
import org.hosewright.files.lay.LaidSource.Draft;
import org.hosewright.files.lay.LaidSource.From;
import org.hosewright.files.lay.LaidSource.Hydrant;
import org.hosewright.files.lay.LaidSource.Pumper;
import org.hosewright.files.lay.LaidSource.Tank;
import org.hosewright.files.term.CouplingText;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.ledger.kit.Kit;

/** The reader of what feeds an engine. */
final class SourceReader {
    private static final List<String> FROM = List.of("hydrant", "tank", "draft");
    private static final String CHAIN = "hose in laying order, as in '650 ft supply-4'";
    private static final String STANDS_AT_IT = "none: the pump stands at it; suction hose belongs under draft";
    private static final String ONE = "one of hydrant, tank and draft";

    private final Kit kit;
    private final String engine;
    private final Set<String> relaying = new LinkedHashSet<>();

    /** @param engine id of the engine that is fed */
    SourceReader(Kit kit, String engine) {
        this.kit = kit;
        this.engine = engine;
    }

    LaidSource source(YamlMap map) {
        if (map.find("lines").isEmpty()) {
            map.only("hydrant", "tank", "draft", "relay", "hose", "rise", "keep", "lines");
            return one(map, relay(map));
        }
        map.only("lines", "keep");
        YamlValue list = map.get("lines", "two supplies or more");
        List<LaidSource> lines = new ArrayList<>();
        for (YamlValue line : list.list()) {
            line.map().only("hydrant", "tank", "draft", "relay", "hose", "rise");
            lines.add(beside(one(line.map(), relay(line.map()))));
        }
        if (lines.size() < 2) {
            throw list.refused("lines of the supply", "two or more; a single one stands under supply itself");
        }
        return new LaidSource(
                map.place().text(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                map.find("keep").map(Quantities::pressure),
                List.of(),
                lines);
    }

    /** A relay that is not the only line into its intake: what it brings hangs on its last pump's pressure. */
    private static LaidSource beside(LaidSource line) {
        if (!line.relay().isEmpty()) {
            Pumper last = line.relay().get(line.relay().size() - 1);
            if (last.pump().isEmpty()) {
                throw new InvalidInput(
                        "pump pressure of " + last.engine(),
                        "",
                        "its pressure, as in pump: 120 psi, since it is not the only line into that intake",
                        last.where());
            }
        }
        return line;
    }

    private LaidSource one(YamlMap map, List<Pumper> relay) {
        List<String> found =
                FROM.stream().filter(word -> map.find(word).isPresent()).toList();
        if (found.size() > 1) {
            throw map.get(found.get(1), ONE).refused("a second source", ONE);
        }
        if (found.contains("tank") || found.contains("draft")) {
            for (String word : List.of("hose", "rise")) {
                if (map.find(word).isPresent()) {
                    throw map.get(word, ONE).refused(word + " of a " + found.get(0), STANDS_AT_IT);
                }
            }
        }
        return new LaidSource(
                map.place().text(),
                found.stream()
                        .findFirst()
                        .map(word -> from(word, map.get(word, ONE).map())),
                chain(map),
                map.find("rise").map(Quantities::rise),
                map.find("keep").map(Quantities::pressure),
                relay,
                List.of());
    }

    private From from(String word, YamlMap map) {
        return switch (word) {
            case "hydrant" -> hydrant(map);
            case "tank" -> tank(map);
            default -> draft(map);
        };
    }

    private static Hydrant hydrant(YamlMap map) {
        map.only("static", "residual", "at", "tested", "coupling");
        YamlValue residual = map.get("residual", Kind.PRESSURE.inWords());
        Hydrant hydrant = new Hydrant(
                Quantities.pressure(map.get("static", Kind.PRESSURE.inWords())),
                Quantities.pressure(residual),
                Quantities.flow(map.get("at", Kind.FLOW.inWords())),
                map.find("tested").map(Quantities::day),
                map.find("coupling").map(CouplingText::read));
        if (hydrant.residual().pascals() >= hydrant.still().pascals()) {
            throw residual.refused("residual pressure", "less than the static pressure");
        }
        return hydrant;
    }

    private static Tank tank(YamlMap map) {
        map.only("level", "loss", "most");
        return new Tank(
                (Volume) Quantities.positive(Kind.VOLUME, map.get("level", Kind.VOLUME.inWords())),
                map.find("loss").map(loss -> Quantities.pointLoss(loss).value()),
                map.find("most").map(Quantities::flow));
    }

    private Draft draft(YamlMap map) {
        map.only("lift", "hose", "strainer", "altitude", "temperature");
        return new Draft(
                (Length) Quantities.positive(Kind.LENGTH, map.get("lift", "the pump's height above the water")),
                chain(map),
                map.find("strainer").map(loss -> Quantities.pointLoss(loss).value()),
                map.find("altitude").map(Quantities::rise),
                map.find("temperature")
                        .map(value -> value.read(Kind.TEMPERATURE.inWords(), QuantityText::temperature)));
    }

    /** The engines between the source and this one, none of them twice. */
    private List<Pumper> relay(YamlMap supply) {
        List<Pumper> relay = new ArrayList<>();
        supply.find("relay").ifPresent(list -> {
            for (YamlValue one : list.list()) {
                Pumper pumper = pumper(one.map());
                if (pumper.engine().equals(engine)) {
                    throw new InvalidInput(
                            "engine of the relay",
                            engine,
                            "another engine than the one that this lay starts from",
                            pumper.where());
                }
                if (!relaying.add(pumper.engine())) {
                    throw new InvalidInput(
                            "engine of the relay, a second time", pumper.engine(), "each engine once", pumper.where());
                }
                relay.add(pumper);
            }
        });
        return relay;
    }

    private Pumper pumper(YamlMap map) {
        map.only("engine", "discharge", "hose", "rise", "pump");
        String id = Names.get(map, "engine", kit.engines().keySet());
        String discharge = Names.get(
                map,
                "discharge",
                Names.of(kit.engines(), id).engine().discharges().keySet());
        List<Stretch> hose = chain(map);
        if (hose.isEmpty()) {
            throw map.get("hose", CHAIN).refused("hose", CHAIN);
        }
        return new Pumper(
                map.place().text(),
                id,
                discharge,
                hose,
                map.find("rise").map(Quantities::rise),
                map.find("pump").map(Quantities::pressure));
    }

    private List<Stretch> chain(YamlMap map) {
        return map.find("hose")
                .map(hose -> hose.read(CHAIN, text -> Chain.parse(text, kit.hoses())))
                .orElse(List.of());
    }
}
