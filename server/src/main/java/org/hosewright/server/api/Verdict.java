package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.NeededRow;
import org.hosewright.ledger.drill.RuleRow;
import org.hosewright.ledger.kit.RuleOfThumb;
import org.hosewright.ledger.line.KitLines;

/** The verdict on the present rule in the language of the nozzle, as pieces of text of which some stand out. */
final class Verdict {
    private final DrillReport report;
    private final QuantityShown shown;
    private final ArrayNode json = Answer.array();

    Verdict(DrillReport report) {
        this.report = report;
        this.shown = QuantityShown.of(report.kit().units());
    }

    ArrayNode json() {
        List<RuleRow> rule = report.rule();
        List<NeededRow> needed = report.needed();
        if (!rule.isEmpty() && report.kit().rule().isPresent()) {
            judge(rule.get(rule.size() - 1), report.kit().rule().get());
        } else if (!needed.isEmpty()) {
            NeededRow last = needed.get(needed.size() - 1);
            say("Needed at " + shown.text(last.length()) + ", level: ");
            mark(shown.withBand(last.pump()));
            say(".");
        }
        return json;
    }

    private void judge(RuleRow row, RuleOfThumb rule) {
        Tip tip = KitLines.get(report.night().gear().nozzles(), row.line().nozzle(), "nozzle")
                .rated(row.line().setting());
        String wanted = shown.text(tip.flowAt());
        String given = shown.text(row.flow().value());
        say("At " + shown.text(row.length()) + " the present rule, " + shown.text(rule.tip()) + " and "
                + shown.text(rule.loss()) + " per " + shown.text(rule.over()) + ", pumps " + shown.text(row.rulePump())
                + " and gives ");
        boolean differs = !given.equals(wanted);
        mark(differs ? given + " where " + wanted + " is wanted" : "the " + given + " that are wanted");
        say(": " + shown.text(row.tip()) + " at the tip, reaction " + shown.text(row.reaction())
                + ". Needed there, level: ");
        mark(shown.withBand(row.neededPump()));
        say(".");
    }

    private void say(String text) {
        json.addObject().put("text", text).put("strong", false);
    }

    private void mark(String text) {
        json.addObject().put("text", text).put("strong", true);
    }
}
