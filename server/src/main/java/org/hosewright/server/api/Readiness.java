package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.reach.ReachResult;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.reach.ReachAnalysis;
import org.hosewright.ledger.reach.ReachReport;

/** What one line still wants before it is ready: measured, its hose tested in date, no longer than is safe. */
final class Readiness {
    private final Kit kit;
    private final HosePackage named;
    private final LocalDate today;
    private final QuantityShown shown;
    private final ObjectNode json = Answer.object();
    private final ArrayNode wants;

    Readiness(Kit kit, HosePackage named, LocalDate today) {
        this.kit = kit;
        this.named = named;
        this.today = today;
        this.shown = QuantityShown.of(kit.units());
        json.put("id", named.id()).put("line", PackageWords.of(kit, named));
        json.put("evidence", InWords.evidence(kit, named));
        wants = json.putArray("wants");
    }

    ObjectNode json() {
        Set<String> hoses = new LinkedHashSet<>();
        named.hose().stream().map(Stretch::hose).forEach(hoses::add);
        hoses.forEach(id -> hose(id, KitLines.get(kit.hoses(), id, "hose")));
        if (KitLines.of(kit, named, new Length(0)).discharge().loss().isEmpty()) {
            want("The piping loss of " + named.discharge() + " is not known.", "Fly it", "/drill");
        }
        reach();
        return json;
    }

    private void hose(String id, HoseRecord record) {
        Basis.Kind basis = record.basis().kind();
        if (basis != Basis.Kind.TEST) {
            want("The loss of " + id + " is not measured; it rests on: " + basis.word() + ".", "Fly it", "/drill");
        }
        switch (KitBounds.age(record, Optional.of(today))) {
            case OVERDUE ->
                want("The last service test of " + id + " is over 12 months old.", "Enter the new one", "/kit");
            case UNDATED -> want("No day of a service test of " + id + " is known.", "Enter it", "/kit");
            case TOO_OLD ->
                want(id + " was made before July 1987 and belongs out of service.", "Change the line", "/kit");
            case IN_DATE -> {}
        }
    }

    private void reach() {
        try {
            var question = new ReachAnalysis.Question(new Length(0), Optional.empty(), Optional.of(today));
            ReachReport report = ReachAnalysis.of(kit.withPackages(Map.of(named.id(), named)), question);
            ReachResult result = report.packages().get(0).result();
            json.put("safe", shown.text(result.longestSafe())).put("stoppedBy", result.stoppedBy());
            double lies_m = named.hose().stream()
                    .mapToDouble(part -> part.length().metres())
                    .sum();
            if (result.longestSafe().metres() < lies_m * (1 - 1e-9)) {
                String says = "It lies " + shown.text(new Length(lies_m)) + " long; safe is "
                        + shown.text(result.longestSafe()) + ".";
                want(says, "See what stops it", "/reach");
            }
        } catch (InvalidInput e) {
            want(String.valueOf(e.getMessage()), "Enter it", "/kit");
        }
    }

    private void want(String says, String does, String go) {
        wants.addObject().put("says", says).put("does", does).put("go", go);
    }
}
