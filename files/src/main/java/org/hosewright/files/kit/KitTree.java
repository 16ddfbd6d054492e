package org.hosewright.files.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.HoseLaw;
import org.hosewright.ledger.kit.Couplings;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.FlownRange;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.kit.RuleOfThumb;

/** A kit as plain keys and values in the order of the open format: what is written, and what a revision code is made of.
 *
 * <p>A value is a text, a whole number, a decimal number, or a map of such.
 */
final class KitTree {
    private final Kit kit;
    private final Written written;

    private KitTree(Kit kit, boolean rounded) {
        this.kit = kit;
        this.written = new Written(kit.units(), rounded);
    }

    static Map<String, Object> of(Kit kit) {
        return new KitTree(kit, false).top();
    }

    /** The same with each standard error rounded to three digits and its value no finer. */
    static Map<String, Object> rounded(Kit kit) {
        return new KitTree(kit, true).top();
    }

    private Map<String, Object> top() {
        Map<String, Object> top = new LinkedHashMap<>();
        top.put("format", 1);
        top.put("company", kit.company());
        top.put("zone", kit.zone());
        top.put("units", kit.units().word());
        Map<String, Object> reaction = new LinkedHashMap<>();
        kit.crewReaction().forEach((people, force) -> reaction.put(String.valueOf(people), written.force(force)));
        if (!reaction.isEmpty()) {
            top.put("crew", Map.of("reaction", reaction));
        }
        NozzleTree nozzles = new NozzleTree(written);
        section(top, "hoses", kit.hoses(), this::hose);
        section(top, "nozzles", kit.nozzles(), nozzles::nozzle);
        section(top, "appliances", kit.appliances(), this::appliance);
        section(top, "engines", kit.engines(), this::engine);
        section(top, "instruments", kit.instruments(), this::instrument);
        section(top, "adapters", kit.couplings().adapters(), this::through);
        section(top, "packages", kit.packages(), this::pack);
        kit.rule().ifPresent(rule -> top.put("rule", rule(rule)));
        put(top, "reserve", kit.reserve().map(written::length));
        put(top, "hydrant-test", kit.hydrantTest().map(TestInterval::text));
        section(top, "evidence", kit.evidence(), this::night);
        return top;
    }

    private static <T> void section(
            Map<String, Object> top,
            String key,
            Map<String, T> things,
            java.util.function.Function<T, Map<String, Object>> make) {
        Map<String, Object> entries = new LinkedHashMap<>();
        things.forEach((id, thing) -> entries.put(id, make.apply(thing)));
        if (!entries.isEmpty()) {
            top.put(key, entries);
        }
    }

    static void put(Map<String, Object> map, String key, Optional<?> value) {
        value.ifPresent(there -> map.put(key, there));
    }

    private Map<String, Object> hose(HoseRecord record) {
        Hose hose = record.hose();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("diameter", written.size(hose.diameter()));
        map.put("section", written.length(hose.section()));
        if (hose.law().isPresent()) {
            law(map, hose.law().get());
        } else {
            map.put("loss", written.known(hose.loss()));
        }
        map.put("basis", record.basis().text());
        put(map, "service-test", hose.serviceTest().map(written::pressure));
        put(map, "tested", record.tested().map(Object::toString));
        record.made().ifPresent(year -> map.put("made", year));
        put(map, "coupling", record.coupling().map(written::coupling));
        put(map, "type", record.type());
        return map;
    }

    private void law(Map<String, Object> map, HoseLaw law) {
        if (law instanceof HoseLaw.HazenWilliams smooth) {
            map.put("hazen-williams", smooth.c());
        } else if (law instanceof HoseLaw.Roughness rough) {
            map.put("roughness", written.size(rough.roughness()));
        }
    }

    private Map<String, Object> appliance(Appliance appliance) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (appliance.loss() instanceof ApplianceLoss.Rule rule) {
            Map<String, Object> loss = new LinkedHashMap<>();
            loss.put("rule", written.pressure(rule.allowance()));
            loss.put("from", written.flow(rule.from()));
            map.put("loss", loss);
        } else if (appliance.loss() instanceof ApplianceLoss.Quadratic quadratic) {
            map.put("loss", written.known(quadratic.loss()));
        }
        map.put("per", appliance.per() == Appliance.Per.LEG ? "leg" : "total");
        put(map, "rated", appliance.rated().map(written::pressure));
        map.putAll(through(kit.couplings().appliances().getOrDefault(appliance.id(), Couplings.Through.UNSAID)));
        return map;
    }

    private Map<String, Object> through(Couplings.Through sides) {
        Map<String, Object> map = new LinkedHashMap<>();
        put(map, CouplingReader.IN, sides.in().map(written::coupling));
        put(map, CouplingReader.OUT, sides.out().map(written::coupling));
        return map;
    }

    private Map<String, Object> engine(EngineRecord record) {
        Engine engine = record.engine();
        Map<String, Object> map = new LinkedHashMap<>();
        Map<String, Object> pump = new LinkedHashMap<>();
        put(pump, "rated", engine.rated().map(written::flow));
        put(pump, "ceiling", engine.ceiling().map(written::pressure));
        if (!pump.isEmpty()) {
            map.put("pump", pump);
        }
        put(map, "tank", engine.tank().map(written::volume));
        put(map, "gauge", record.gauge());
        Map<String, Object> discharges = new LinkedHashMap<>();
        engine.discharges().forEach((id, outlet) -> discharges.put(id, discharge(record, outlet)));
        if (!discharges.isEmpty()) {
            map.put("discharges", discharges);
        }
        return map;
    }

    private Map<String, Object> discharge(EngineRecord record, Discharge outlet) {
        Map<String, Object> map = new LinkedHashMap<>();
        put(map, "size", outlet.size().map(written::size));
        put(map, "loss", outlet.loss().map(written::known));
        put(
                map,
                "basis",
                Optional.ofNullable(record.pipingBasis().get(outlet.id())).map(basis -> basis.text()));
        String id = Couplings.discharge(record.engine().id(), outlet.id());
        put(
                map,
                CouplingReader.KEY,
                Optional.ofNullable(kit.couplings().discharges().get(id)).map(written::coupling));
        return map;
    }

    private Map<String, Object> instrument(InstrumentRecord record) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (record.instrument() instanceof Instrument.PressureGauge gauge) {
            map.put("kind", "pressure-gauge");
            put(map, "range", gauge.range().map(written::pressure));
            map.put("accuracy", written.accuracy(gauge.accuracy()));
            put(map, "tap", gauge.tap().map(written::tap));
            put(map, "least-count", gauge.leastCount().map(written::pressure));
            put(map, "offset", record.offset().map(written::known));
        } else {
            map.put("kind", "flow-meter");
            map.put("accuracy", written.accuracy(record.instrument().accuracy()));
        }
        put(map, "calibrated", record.calibrated().map(Object::toString));
        return map;
    }

    private Map<String, Object> pack(HosePackage pack) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("engine", pack.engine());
        map.put("discharge", pack.discharge());
        map.put("hose", written.chain(pack.hose(), kit.hoses()));
        map.put("nozzle", pack.nozzle());
        if (!pack.setting().isEmpty()) {
            map.put("setting", pack.setting());
        }
        pack.crew().ifPresent(people -> map.put("crew", people));
        put(map, "target", pack.target().map(written::flow));
        put(map, "least", pack.least().map(written::flow));
        put(map, "ordered", pack.ordered().map(written::pressure));
        return map;
    }

    private Map<String, Object> rule(RuleOfThumb rule) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("tip", written.pressure(rule.tip()));
        map.put("per", written.pressure(rule.loss()) + " / " + written.length(rule.over()));
        return map;
    }

    private Map<String, Object> night(NightRecord night) {
        Map<String, Object> map = new LinkedHashMap<>();
        put(map, "date", night.date().map(Object::toString));
        night.readings().ifPresent(count -> map.put("readings", count));
        put(map, "longest", night.tested().map(written::length));
        if (!night.flown().isEmpty()) {
            Map<String, Object> flown = new LinkedHashMap<>();
            night.flown().forEach((id, range) -> flown.put(id, range(range)));
            map.put("flown", flown);
        }
        if (!night.correlation().isEmpty()) {
            map.put("correlation", new LinkedHashMap<String, Object>(night.correlation()));
        }
        if (!night.flow().isEmpty()) {
            Map<String, Object> flows = new LinkedHashMap<>();
            night.flow().forEach((nozzle, factor) -> flows.put(nozzle, written.known(factor)));
            map.put("flow", flows);
        }
        return map;
    }

    private Map<String, Object> range(FlownRange range) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("from", written.flow(range.least()));
        map.put("to", written.flow(range.most()));
        return map;
    }
}
