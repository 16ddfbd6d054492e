package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.calibration.Terms;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.working.FlowWorking;
import org.hosewright.hydraulics.working.LossWorking;
import org.hosewright.hydraulics.working.PumpWorking;
import org.hosewright.hydraulics.working.ReactionWorking;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.line.NightEngines;

/** The hand calculations of a night's headline numbers, from the kit as it would be with the night taken over. */
final class NightWorkings {
    private final Kit kit;
    private final NightEngines engines;
    private final UnitSystem units;
    private final QuantityShown shown;
    private final List<Working> workings = new ArrayList<>();
    private final Set<String> lossesShown = new LinkedHashSet<>();

    private NightWorkings(Kit kit, NightEngines engines) {
        this.engines = engines;
        this.kit = kit;
        this.units = kit.units();
        this.shown = QuantityShown.of(units);
    }

    /** The workings of a report, those of numbers that it withholds left out. */
    static List<Working> of(DrillReport report) {
        NightWorkings all = new NightWorkings(
                Acceptance.of(report), NightEngines.of(report.night().readings()));
        for (TestedLine tested : report.lines()) {
            boolean told = report.needed().stream().anyMatch(row -> row.line().equals(tested));
            if (told) {
                all.losses(report, tested);
                if (parted(report, tested)) {
                    tested.chains().forEach(chain -> all.pressures(report, tested, chain));
                }
            }
        }
        report.calibration()
                .terms()
                .meters()
                .forEach((id, factor) ->
                        new MeterWorking(report, id).working(factor).ifPresent(all.workings::add));
        return List.copyOf(all.workings);
    }

    /** True where hose and piping are known apart; a sum known only as a whole has no hand calculation. */
    private static boolean parted(DrillReport report, TestedLine tested) {
        Terms terms = report.calibration().terms();
        return terms.hoses().keySet().containsAll(tested.hoses())
                && terms.discharges().containsKey(tested.discharge());
    }

    private void losses(DrillReport report, TestedLine tested) {
        Line line = line(tested, tested.chains().get(tested.chains().size() - 1));
        Flow flow = KitLines.nozzle(report.kit(), tested.nozzle(), tested.setting())
                .rated(tested.setting())
                .flowAt();
        String at = " at " + shown.text(flow);
        for (String hose : new LinkedHashSet<>(tested.hoses())) {
            if (report.calibration().terms().hoses().containsKey(hose) && lossesShown.add(hose)) {
                Line hundred = line(tested, List.of(new Stretch(hose, hundred())));
                workings.add(named("Hose loss of " + hose + at, LossWorking.ofHose(hundred, flow, units)));
            }
        }
        if (report.calibration().terms().discharges().containsKey(tested.discharge())
                && lossesShown.add(tested.discharge())) {
            workings.add(named("Piping loss of " + tested.discharge() + at, LossWorking.ofPiping(line, flow, units)));
        }
    }

    private void pressures(DrillReport report, TestedLine tested, List<Stretch> chain) {
        Line line = line(tested, chain);
        String where = " at " + shown.text(line.length()) + ", level";
        workings.add(named("Needed pump pressure" + where, PumpWorking.of(line, duty(line), units)));
        Optional<RuleRow> rule = report.rule().stream()
                .filter(row -> row.line().equals(tested) && row.length().equals(line.length()))
                .findFirst();
        rule.ifPresent(row -> {
            workings.add(named("What the rule delivers" + where, FlowWorking.of(line, row.rulePump(), units)));
            LineState state = LineSolver.atPump(line, row.rulePump());
            workings.add(named("Reaction at the rule's pressure" + where, ReactionWorking.of(line, state, units)));
        });
    }

    /** The length that hose losses are said for. */
    private Length hundred() {
        return units == UnitSystem.US ? Length.ofFeet(100) : Length.ofMetres(100);
    }

    private static Ask duty(Line line) {
        return Duty.of(line, Optional.empty()).ask();
    }

    private static Working named(String title, Working working) {
        return new Working(title, working.steps());
    }

    private Line line(TestedLine tested, List<Stretch> chain) {
        Discharge discharge = engines.find(kit, tested.discharge())
                .map(record -> record.engine().getDischarge(tested.discharge()))
                .orElse(new Discharge(tested.discharge(), Optional.empty(), Optional.empty()));
        return new Line(
                discharge,
                KitLines.runs(kit, chain, new Length(0)),
                KitLines.nozzle(kit, tested.nozzle(), tested.setting()),
                tested.setting());
    }
}
