package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Ratio;

/** One number of the kit with a stated error that a lay rests on.
 *
 * @param id the hose, discharge or nozzle
 * @param error its standard error, in SI; above 0
 * @param shift the lay with that number changed by a share of its standard error
 * @param back the lay with it changed the other way
 */
record LayTerm(String id, double error, UnaryOperator<Lay> shift, UnaryOperator<Lay> back) {
    /** The share of a standard error that slopes are taken over [1]: small against curvature, far above rounding. */
    static final double SHARE = 0.05;

    /** The numbers of a lay, each once. */
    static List<LayTerm> listOf(Lay lay) {
        Map<String, LayTerm> terms = new LinkedHashMap<>();
        for (Lay.FromDischarge line : lay.lines()) {
            line.discharge()
                    .loss()
                    .ifPresent(loss -> add(terms, line.discharge().id(), loss, LayTerm::piping));
            hoses(line.leg(), terms);
        }
        lay.joins().values().forEach(joint -> hoses(joint.leg(), terms));
        for (End.Outlet outlet : lay.outlets()) {
            String id = outlet.nozzle().tipName(outlet.setting());
            outlet.nozzle().flow().ifPresent(flow -> add(terms, id, flow, LayTerm::factor));
        }
        return new ArrayList<>(terms.values());
    }

    private static void hoses(Leg leg, Map<String, LayTerm> terms) {
        leg.runs().forEach(run -> add(terms, run.hose().id(), run.hose().loss(), LayTerm::hose));
        leg.end().legs().forEach(next -> hoses(next, terms));
    }

    /** How a number of the kit is changed in a lay. */
    private interface Change {
        Lay changed(Lay lay, String id, double by);
    }

    private static void add(Map<String, LayTerm> terms, String id, Known<?> known, Change change) {
        double error = known.standardErrorSi();
        if (error > 0) {
            terms.putIfAbsent(
                    id,
                    new LayTerm(
                            id,
                            error,
                            lay -> change.changed(lay, id, SHARE * error),
                            lay -> change.changed(lay, id, -SHARE * error)));
        }
    }

    private static Lay hose(Lay lay, String id, double by) {
        return lay.mapped(leg -> hose(leg, id, by));
    }

    private static Leg hose(Leg leg, String id, double by) {
        List<Run> runs = new ArrayList<>();
        for (Run run : leg.runs()) {
            Hose hose = run.hose();
            Known<HoseLoss> loss = new Known<>(
                    new HoseLoss(hose.loss().value().r() + by), hose.loss().standardError());
            runs.add(hose.id().equals(id) ? new Run(hose.withLoss(loss), run.length(), run.rise(), run.end()) : run);
        }
        List<Leg> legs =
                leg.end().legs().stream().map(next -> hose(next, id, by)).toList();
        return new Leg(runs, legs.isEmpty() ? leg.end() : leg.end().withLegs(legs), leg.gate(), leg.damage());
    }

    private static Lay piping(Lay lay, String id, double by) {
        List<Lay.FromDischarge> lines = new ArrayList<>();
        for (Lay.FromDischarge line : lay.lines()) {
            Discharge one = line.discharge();
            Optional<Known<PointLoss>> loss = one.loss()
                    .map(known -> new Known<>(new PointLoss(known.value().k() + by), known.standardError()));
            Discharge changed = new Discharge(one.id(), one.size(), loss);
            lines.add(one.id().equals(id) ? new Lay.FromDischarge(changed, line.leg()) : line);
        }
        return new Lay(lines, lay.joins(), lay.supply(), lay.pump());
    }

    private static Lay factor(Lay lay, String id, double by) {
        return lay.changed(outlet -> {
            Nozzle nozzle = outlet.nozzle();
            Optional<Known<Ratio>> flow = nozzle.flow()
                    .map(known -> new Known<>(new Ratio(known.value().value() + by), known.standardError()));
            return nozzle.tipName(outlet.setting()).equals(id)
                    ? outlet.with(new Nozzle(nozzle.id(), nozzle.settings(), nozzle.most(), flow), outlet.setting())
                    : outlet;
        });
    }
}
