package org.hosewright.cli.text;

import java.util.List;
import org.hosewright.hydraulics.lay.FieldMethods;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Gate;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.working.Step;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.LayWhatIf;
import org.hosewright.ledger.lay.PanelReading;

/** A lay solved, in plain text; broken limits and the second line stand before the numbers. */
public final class LayText {
    private LayText() {}

    /** The lay, and what may happen to it. */
    public static List<String> of(LayReport lay, List<LayWhatIf> whatIf) {
        var shown = QuantityShown.of(lay.kit().units());
        var report = new Report();
        report.title(lay.kit().company() + ", " + lay.laid().engine());
        report.list("Before anything else", lay.radio());
        report.list("Beyond its limit", listBroken(lay.limits(), shown));
        report.list("Before you use these numbers", lay.outside());
        report.list("When a line opens or shuts, pump untouched", lay.secondSays());
        report.table("The pump", pump(lay, shown));
        report.table("The tips", tips(lay, shown));
        report.table("At the discharges", gates(lay, shown));
        report.table("The gauges at the panel", panel(lay, shown));
        report.table("Limits, the most used first", limits(lay.limits(), shown));
        report.table("In the hose; a sudden stop is an estimate", hoses(lay, shown));
        lay.workings().forEach(working -> report.table(working.title(), steps(working)));
        report.table("By the trade's methods", methods(lay, shown));
        report.list("Keep in mind", lay.cautions());
        report.list("Assumed", lay.assumed());
        whatIf.forEach(one -> WhatIfText.say(report, one, shown));
        return report.lines();
    }

    private static Columns pump(LayReport lay, QuantityShown shown) {
        var pump = new Columns("", "");
        pump.add("pump", shown.withBand(lay.pump()));
        lay.intake().ifPresent(intake -> pump.add("intake", shown.text(intake)));
        pump.add("flow", shown.text(lay.state().flow()));
        return pump;
    }

    private static Columns tips(LayReport lay, QuantityShown shown) {
        var tips = new Columns("tip", "at the tip", "flow", "reaction");
        for (AtTip tip : lay.state().tips()) {
            boolean shut = tip.outlet().shut();
            tips.add(
                    tip.outlet().id() + (shut ? ", shut" : ""),
                    shown.text(tip.state().tip()),
                    shown.withBand(lay.flowOf(tip)),
                    shown.text(tip.state().reaction()));
        }
        return tips;
    }

    private static Columns gates(LayReport lay, QuantityShown shown) {
        var gates = new Columns("gate down", "by");
        for (Gate gate : lay.state().gates()) {
            gates.add(gate.discharge(), shown.text(gate.down()));
        }
        return gates;
    }

    private static Columns panel(LayReport lay, QuantityShown shown) {
        var panel = new Columns("gauge", "shows", "");
        for (PanelReading one : lay.panel()) {
            panel.add(
                    one.gauge(),
                    shown.text(one.pressure()),
                    one.flow().map(shown::text).orElse(""));
        }
        return panel;
    }

    /** How fast the water runs in each hose and what shutting at once may add. */
    private static Columns hoses(LayReport lay, QuantityShown shown) {
        var table = new Columns("to", "hose", "flow", "water runs", "sudden stop adds");
        for (Piece piece : lay.state().listHose()) {
            piece.surge()
                    .ifPresent(surge -> table.add(
                            piece.place(),
                            piece.what(),
                            shown.text(piece.flow()),
                            shown.velocity(surge.velocity_ms()),
                            "about " + shown.text(surge.rise())));
        }
        return table;
    }

    /** What each method gives, or why it is not good for the lay. */
    private static Columns methods(LayReport lay, QuantityShown shown) {
        var table = new Columns("to", "method", "pump");
        for (FieldMethods one : lay.methods()) {
            table.add(
                    one.tip(),
                    one.method().word(),
                    one.pump()
                            .map(pump -> shown.text(pump) + (one.note().isEmpty() ? "" : ", " + one.note()))
                            .orElse("not good here: " + one.refused()));
        }
        return table;
    }

    private static Columns steps(Working working) {
        var table = new Columns("", "", "");
        for (Step step : working.steps()) {
            table.add(step.says(), step.numbers(), step.result());
        }
        return table;
    }

    static List<String> listBroken(List<Limit> limits, QuantityShown shown) {
        return limits.stream()
                .filter(Limit::broken)
                .map(limit -> limit.what() + ": " + shown.text(limit.at()) + ", above " + shown.text(limit.limit())
                        + " (" + limit.rule(shown.units()) + ")")
                .toList();
    }

    private static Columns limits(List<Limit> limits, QuantityShown shown) {
        var table = new Columns("limit", "stands at", "of", "used");
        for (Limit limit : limits) {
            table.add(
                    limit.what(),
                    shown.text(limit.at()),
                    shown.text(limit.limit()),
                    Numbers.fixed(100 * limit.used(), 0) + " %");
        }
        return table;
    }
}
