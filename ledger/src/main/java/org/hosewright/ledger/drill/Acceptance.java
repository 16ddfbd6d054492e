package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.hosewright.evidence.calibration.Belief;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.calibration.Terms;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.FlownRange;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.kit.NozzleRecord;
import org.hosewright.ledger.line.NightEngines;

/** Takes over into the kit what a night determined, and nothing else. */
public final class Acceptance {
    private final DrillReport report;
    private final Terms terms;
    private final Basis basis;

    private Acceptance(DrillReport report) {
        this.report = report;
        this.terms = report.calibration().terms();
        this.basis = new Basis(Basis.Kind.TEST, report.name());
    }

    /** The kit with a night's determined terms, each with its standard error and basis; other terms keep theirs.
     *
     * <p>The hose losses were fitted together with what was believed of the tips, so the night's record keeps those
     * beliefs and the correlations: pump pressures worked out from the new kit are then as well known as the night
     * knows them.
     */
    public static Kit of(DrillReport report) {
        return new Acceptance(report).kit();
    }

    private Kit kit() {
        Kit old = report.kit();
        Map<String, NightRecord> evidence = new LinkedHashMap<>();
        old.evidence().forEach((name, record) -> evidence.put(name, withoutReplaced(record)));
        evidence.put(report.name(), night());
        return new Kit(
                old.company(),
                old.zone(),
                old.units(),
                old.crewReaction(),
                changed(old.hoses(), terms.hoses(), this::hose),
                changed(old.nozzles(), terms.nozzles(), this::nozzle),
                old.appliances(),
                engines(old.engines()),
                changed(
                        old.instruments(),
                        terms.gauges(),
                        (record, offset) ->
                                new InstrumentRecord(record.instrument(), Optional.of(offset), record.calibrated())),
                old.packages(),
                old.rule(),
                old.reserve(),
                evidence,
                old.couplings(),
                old.hydrantTest());
    }

    /** A record with a term taken over. */
    private interface Change<R, T> {
        R with(R record, T term);
    }

    private static <R, T> Map<String, R> changed(Map<String, R> old, Map<String, T> terms, Change<R, T> change) {
        Map<String, R> changed = new LinkedHashMap<>(old);
        terms.forEach((id, term) -> changed.computeIfPresent(id, (same, record) -> change.with(record, term)));
        return changed;
    }

    private HoseRecord hose(HoseRecord record, Known<HoseLoss> loss) {
        return new HoseRecord(
                record.hose().withLoss(loss), basis, record.tested(), record.made(), record.coupling(), record.type());
    }

    private NozzleRecord nozzle(NozzleRecord record, Known<Ratio> flow) {
        Nozzle old = record.nozzle();
        Nozzle nozzle = new Nozzle(old.id(), old.settings(), old.most(), Optional.of(flow));
        return new NozzleRecord(nozzle, record.gauged(), record.coupling());
    }

    /** Piping belongs to the engine that flew the discharge, as in the night's gear. */
    private Map<String, EngineRecord> engines(Map<String, EngineRecord> old) {
        Map<String, EngineRecord> engines = new LinkedHashMap<>(old);
        NightEngines flown = NightEngines.of(report.night().readings());
        terms.discharges()
                .forEach((id, loss) -> flown.find(report.kit(), id)
                        .ifPresent(record -> engines.compute(
                                record.engine().id(),
                                (same, changed) -> piping(changed == null ? record : changed, id, loss))));
        return engines;
    }

    private EngineRecord piping(EngineRecord record, String id, Known<PointLoss> loss) {
        Engine old = record.engine();
        Map<String, Discharge> discharges = new LinkedHashMap<>(old.discharges());
        discharges.computeIfPresent(id, (same, outlet) -> new Discharge(id, outlet.size(), Optional.of(loss)));
        Map<String, Basis> bases = new LinkedHashMap<>(record.pipingBasis());
        bases.put(id, basis);
        Engine engine = new Engine(old.id(), old.rated(), old.ceiling(), old.tank(), discharges);
        return new EngineRecord(engine, bases, record.gauge());
    }

    private NightRecord night() {
        int used = (int)
                report.calibration().readings().stream().filter(Judged::used).count();
        Optional<Length> longest = report.lines().stream()
                .map(TestedLine::longest)
                .reduce((one, other) -> one.metres() >= other.metres() ? one : other);
        return new NightRecord(report.date(), OptionalInt.of(used), correlations(), longest, flown(), flows());
    }

    /** An older night without the correlations of numbers that it no longer stands for. */
    private NightRecord withoutReplaced(NightRecord record) {
        List<String> replaced = ids();
        Map<String, Double> kept = new LinkedHashMap<>(record.correlation());
        kept.keySet().removeIf(pair -> Stream.of(pair.split("/")).anyMatch(replaced::contains));
        Map<String, FlownRange> flown = new LinkedHashMap<>(record.flown());
        flown.keySet().removeAll(replaced);
        return new NightRecord(record.date(), record.readings(), kept, record.tested(), flown, record.flow());
    }

    /** The flows that each loss which the night determines was flown at. */
    private Map<String, FlownRange> flown() {
        Map<String, FlownRange> flown = new LinkedHashMap<>();
        for (TestedLine line : report.lines()) {
            FlownRange range = new FlownRange(line.least(), line.most())
                    .outToWhole(report.kit().units());
            List<String> lost = new ArrayList<>(line.hoses());
            lost.add(line.discharge());
            lost.stream()
                    .filter(id ->
                            terms.hoses().containsKey(id) || terms.discharges().containsKey(id))
                    .forEach(id -> flown.merge(id, range, FlownRange::with));
        }
        return flown;
    }

    private Map<String, Known<Ratio>> flows() {
        Belief belief = report.calibration().belief();
        Map<String, Known<Ratio>> flows = new LinkedHashMap<>();
        for (TestedLine line : report.lines()) {
            String tip = line.tipName(report.kit());
            boolean atNozzle = terms.nozzles().containsKey(tip) && tip.equals(line.nozzle());
            if (!atNozzle) {
                belief.nozzle(tip).ifPresent(flow -> flows.put(tip, flow));
            }
        }
        return flows;
    }

    private Map<String, Double> correlations() {
        List<String> ids = ids();
        Map<String, Double> pairs = new LinkedHashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            for (int j = i + 1; j < ids.size(); j++) {
                double rho = report.calibration().belief().correlation(ids.get(i), ids.get(j));
                pairs.put(ids.get(i) + "/" + ids.get(j), Math.round(rho * 1e6) / 1e6);
            }
        }
        return pairs;
    }

    /** The numbers that this night speaks of: losses it determines, and nozzles whose flow it believes something of. */
    private List<String> ids() {
        List<String> ids = new ArrayList<>(terms.hoses().keySet());
        ids.addAll(terms.discharges().keySet());
        report.lines().stream()
                .map(line -> line.tipName(report.kit()))
                .distinct()
                .filter(tip -> report.calibration().belief().nozzle(tip).isPresent())
                .forEach(ids::add);
        return ids;
    }
}
