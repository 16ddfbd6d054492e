package org.hosewright.files.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;

/** The reader of the engines of a kit file. */
final class EngineReader {
    private EngineReader() {}

    static EngineRecord engine(String id, YamlValue value) {
        YamlMap map = value.map();
        map.only("pump", "tank", "discharges", "gauge");
        Optional<YamlMap> pump = map.findMap("pump");
        pump.ifPresent(p -> p.only("rated", "ceiling"));
        Optional<YamlMap> outlets = map.findMap("discharges");
        Map<String, Discharge> discharges = outlets.map(all -> all.byId("a discharge", EngineReader::discharge))
                .orElse(Map.of());
        Map<String, Basis> bases = new LinkedHashMap<>();
        outlets.ifPresent(all -> discharges
                .keySet()
                .forEach(name -> all.find(name)
                        .flatMap(one -> one.map().find("basis"))
                        .ifPresent(basis -> bases.put(name, EquipmentReader.basis(basis)))));
        Engine engine = new Engine(
                id,
                pump.flatMap(p -> p.find("rated")).map(Quantities::flow),
                pump.flatMap(p -> p.find("ceiling")).map(Quantities::pressure),
                map.find("tank").map(tank -> (Volume) Quantities.positive(Kind.VOLUME, tank)),
                discharges);
        return new EngineRecord(engine, bases, map.find("gauge").map(gauge -> gauge.text("the name of a gauge")));
    }

    /** Refuses an engine whose panel gauge the kit does not list. */
    static void checkGauges(YamlMap file, Kit kit) {
        kit.engines()
                .forEach((id, record) -> record.gauge().ifPresent(gauge -> {
                    InstrumentRecord found = kit.instruments().get(gauge);
                    if (found == null || !(found.instrument() instanceof Instrument.PressureGauge)) {
                        YamlValue value = file.findMap("engines")
                                .flatMap(engines -> engines.findMap(id))
                                .flatMap(engine -> engine.find("gauge"))
                                .orElseThrow();
                        throw value.refused("gauge", Names.known(gauge, InstrumentReader.gauges(kit)));
                    }
                }));
    }

    private static Discharge discharge(String id, YamlValue value) {
        YamlMap map = value.map();
        map.only("size", "loss", "basis", CouplingReader.KEY);
        return new Discharge(
                id,
                map.find("size").map(EquipmentReader::diameter),
                map.find("loss").map(Quantities::pointLoss));
    }
}
