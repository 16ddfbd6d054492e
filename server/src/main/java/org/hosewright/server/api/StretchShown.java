package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.hosewright.ground.stretch.StretchEstimate;
import org.hosewright.ground.stretch.StretchFactor;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.stretch.SecondLine;
import org.hosewright.ledger.stretch.StretchReport;

/** An estimated stretch in the words of its page. */
final class StretchShown {
    private final Kit kit;
    private final StretchReport report;
    private final Optional<StretchFactor> factor;
    private final QuantityShown shown;

    StretchShown(Kit kit, StretchReport report, Optional<StretchFactor> factor) {
        this.kit = kit;
        this.report = report;
        this.factor = factor;
        this.shown = QuantityShown.of(kit.units());
    }

    ObjectNode json() {
        StretchEstimate estimate = report.estimate();
        ObjectNode json = Answer.object().put("package", report.named().id());
        json.put("line", PackageWords.of(kit, report.named()));
        json.put("sections", estimate.sections())
                .put("fewest", estimate.fewest())
                .put("most", estimate.most());
        json.put("section", shown.text(estimate.plan().section())).put("hose", shown.text(estimate.hose()));
        json.put("needed", shown.withBand(estimate.needed())).put("rise", shown.rise(report.rise()));
        json.set("parts", parts());
        ArrayNode lines = json.putArray("lines");
        report.lines().forEach(laid -> lines.add(line(laid)));
        json.put("within", report.isWithinReach()).put("safe", shown.text(report.longestSafe()));
        json.put("stoppedBy", report.stoppedBy());
        report.second().ifPresent(second -> json.set("second", second(second)));
        json.put("floor", shown.text(CardAnalysis.floor(kit.units())));
        json.put("floorAdder", shown.text(CardAnalysis.floorAdder(kit.units())));
        json.set("factor", factor(factor));
        report.cautions().forEach(json.putArray("cautions")::add);
        report.assumed().forEach(json.putArray("assumed")::add);
        return json;
    }

    private ArrayNode parts() {
        ArrayNode parts = Answer.array();
        report.estimate()
                .parts()
                .forEach(part -> parts.addObject()
                        .put("kind", part.kind().word())
                        .put("says", part.kind().says())
                        .put("note", part.says())
                        .put("length", shown.withBand(part.length())));
        return parts;
    }

    private ObjectNode line(StretchReport.Laid laid) {
        double hose_m = laid.sections() * report.estimate().plan().section().metres();
        ObjectNode json = Answer.object().put("sections", laid.sections());
        json.put("hose", shown.text(new Length(hose_m)));
        json.put("pump", shown.withBand(laid.line().pump()));
        json.put("flow", shown.withBand(laid.line().flow()))
                .put("safe", laid.line().isSafe());
        laid.line()
                .first()
                .ifPresent(limit -> json.put("limit", limit.what()).put("used", Math.round(100 * limit.used())));
        return json;
    }

    private ObjectNode second(SecondLine second) {
        ObjectNode json = Answer.object().put("package", second.named().id());
        json.put("pump", shown.text(second.pump())).put("flow", shown.text(second.flow()));
        json.put("gate", second.gate()).put("gated", shown.text(second.gated()));
        second.first().ifPresent(limit -> json.put("limit", limit.what()).put("used", Math.round(100 * limit.used())));
        return json.put("safe", second.isSafe()).put("enough", second.enough());
    }

    /** The company's own factor with its 95 % interval; what is taken before it has one says so. */
    static ObjectNode factor(Optional<StretchFactor> learnt) {
        StretchFactor factor = learnt.orElse(StretchFactor.UNLEARNT);
        double half = QuantityShown.HALF_WIDTH * factor.logError();
        ObjectNode json = Answer.object().put("stretches", factor.stretches());
        json.put("factor", Numbers.fixed(factor.median(), 2));
        json.put("low", Numbers.fixed(factor.median() * Math.exp(-half), 2));
        return json.put("high", Numbers.fixed(factor.median() * Math.exp(half), 2));
    }
}
