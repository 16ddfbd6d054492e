package org.hosewright.files.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Gate;
import org.hosewright.hydraulics.lay.SecondLine;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.lay.BranchedReport;

/** The fields of the result of a lay with several tips; what a second line does stands before the numbers. */
final class BranchedFields {
    private final BranchedReport report;
    private final UnitSystem units;

    BranchedFields(BranchedReport report) {
        this.report = report;
        this.units = report.kit().units();
    }

    Map<String, Object> map() {
        List<String> shut = report.state().tips().stream()
                .filter(tip -> tip.outlet().shut())
                .map(tip -> tip.outlet().id())
                .toList();
        return new Fields(units)
                .put("units", units.word())
                .putAll(
                        "secondLine",
                        report.secondLines().stream().map(this::second).toList())
                .put("pump", pump())
                .putAll("tips", tips(report.state().open()))
                .put("shut", shut)
                .putAll("gates", report.state().gates().stream().map(this::gate).toList())
                .putAll(
                        "limits",
                        report.limits().stream()
                                .map(limit -> LayFields.limit(limit, units))
                                .toList())
                .putAll("workings", DrillFields.workings(report.workings()))
                .put("cautions", cautions())
                .put("assumed", report.assumed())
                .map();
    }

    private Map<String, Object> pump() {
        Fields pump = new Fields(units)
                .put("pressure", report.state().pump())
                .put("flow", report.state().flow());
        report.intake().ifPresent(intake -> pump.put("intake", intake));
        return pump.map();
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>(report.secondSays());
        all.addAll(report.cautions());
        return all;
    }

    private Map<String, Object> second(SecondLine one) {
        return new Fields(units)
                .put("turned", one.turned())
                .put("opens", one.opens())
                .put("flow", one.lay().flow())
                .putAll("tips", tips(one.tips()))
                .map();
    }

    private List<Map<String, Object>> tips(List<AtTip> tips) {
        return tips.stream()
                .map(tip -> new Fields(units)
                        .put("id", tip.outlet().id())
                        .put("pressure", tip.state().tip())
                        .put("flow", tip.state().flow())
                        .put("reaction", tip.state().reaction())
                        .map())
                .toList();
    }

    private Map<String, Object> gate(Gate gate) {
        return new Fields(units)
                .put("discharge", gate.discharge())
                .put("gateDown", gate.down())
                .map();
    }
}
